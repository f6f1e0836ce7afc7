import { normalOverMad, roundingSpread } from '../numbers/index.js';
import { median } from './median.js';
import { orderStatistic } from './orderStatistic.js';
import { copyPresent, workspace } from './present.js';

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
  const deviations = workspace(values.length);
  const count = copyPresent(values, deviations);
  if (count === 0) return Number.NaN;
  for (let i = 0; i < count; i++) {
    const value = deviations[i] as number;
    deviations[i] = value === about ? 0 : Math.abs(value - about); // an infinite loss is no way from itself
  }
  return normalOverMad.value * orderStatistic(deviations, 0.5 * (count - 1), count);
}

/**
 * Spread of readings on a coarse scale: the scaled median absolute deviation, and the spread of rounding under it.
 *
 * @param values numbers in any order, NaN where missing (left out)
 * @param quantum smallest step that the readings can show [unit of the values]; 0 where it is finer than can be told
 * @returns never below quantum / sqrt(12); NaN where no value is present
 *
 * Independent errors add by their squares.
 * @example robustSpread([98, 98, 98, 98, 99], 1) // 0.2887
 */
export function robustSpread(values: ArrayLike<number>, quantum: number): number {
  return Math.hypot(medianAbsoluteDeviation(values), roundingSpread.value * quantum);
}
