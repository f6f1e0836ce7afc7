import { UsageError } from '../columns/index.js';
import { orderStatistic } from './orderStatistic.js';
import { copyPresent, workspace } from './present.js';

/**
 * Value below which a share of the values lies, interpolated linearly between the two nearest.
 *
 * @param values numbers in any order, NaN where missing (left out)
 * @param share 0 (least) to 1 (greatest)
 * @returns NaN where no value is present
 * @throws UsageError for a share outside 0 to 1
 *
 * Source: type 7 of Hyndman and Fan, The American Statistician 50 (1996), the default of numpy and R.
 * @example quantile([1, 2], 0.25) // 1.25
 */
export function quantile(values: ArrayLike<number>, share: number): number {
  if (!(share >= 0 && share <= 1)) throw new UsageError(`quantile: share ${share} must lie from 0 to 1`);
  const work = workspace(values.length);
  const count = copyPresent(values, work);
  return count === 0 ? Number.NaN : orderStatistic(work, (count - 1) * share, count);
}
