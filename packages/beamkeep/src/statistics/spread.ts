import { median } from './median.js';
import { orderStatistic } from './orderStatistic.js';
import { present } from './present.js';

/**
 * Standard deviation of normal noise over its median absolute deviation: the inverse of the normal quantile at 0.75.
 *
 * Source: scipy.stats.median_abs_deviation (1.4826 is the rounded figure).
 */
export const normalOverMedianDeviation = 1.482602218505602;

/**
 * Spread about the median that a few wild values cannot move, scaled so that normal noise gives its standard deviation.
 *
 * @param values numbers in any order, NaN where missing (left out)
 * @param about the middle to measure from; their median when left out
 * @returns 0 where more than half of the values are the same; NaN where none is present
 *
 * A coarse reading (1 % steps) can make it 0 though the light is noisy: use `robustSpread` for a scale to divide by.
 * Source: Venables and Ripley, Modern Applied Statistics with S, 4th ed., section 5.5.
 * @example medianAbsoluteDeviation([1, 2, 3, 4, 100]) // 1.4826
 */
export function medianAbsoluteDeviation(values: ArrayLike<number>, about = median(values)): number {
  const deviations = present(values);
  if (deviations.length === 0) return Number.NaN;
  for (let i = 0; i < deviations.length; i++) deviations[i] = Math.abs((deviations[i] as number) - about);
  return normalOverMedianDeviation * orderStatistic(deviations, (deviations.length - 1) / 2);
}

/**
 * Spread of readings on a coarse scale: the scaled median absolute deviation, and the spread of rounding under it.
 *
 * @param values numbers in any order, NaN where missing (left out)
 * @param quantum smallest step that the readings can show [unit of the values]; 0 where it is finer than can be told
 * @returns never below quantum / sqrt(12); NaN where no value is present
 *
 * The standard deviation of an even rounding error is quantum / sqrt(12); independent errors add by their squares.
 * @example robustSpread([98, 98, 98, 98, 99], 1) // 0.2887
 */
export function robustSpread(values: ArrayLike<number>, quantum: number): number {
  return Math.sqrt(medianAbsoluteDeviation(values) ** 2 + quantum ** 2 / 12);
}
