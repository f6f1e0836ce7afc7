import { quickselect } from 'simple-statistics';

/**
 * The value at a rank between the sorted values, in linear time; reorders what it is given.
 *
 * Floyd and Rivest's selection of simple-statistics, which works on typed arrays although its types ask for number[].
 *
 * @param values without NaN, one or more; left reordered
 * @param rank 0 for the least, values.length - 1 for the greatest; a fraction between two ranks interpolates linearly
 */
export function orderStatistic(values: Float64Array, rank: number): number {
  const below = Math.floor(rank);
  quickselect(values as unknown as number[], below);
  const lower = values[below] as number;
  const share = rank - below;
  if (share === 0) return lower;
  let upper = Number.POSITIVE_INFINITY;
  for (let i = below + 1; i < values.length; i++) {
    const value = values[i] as number;
    if (value < upper) upper = value;
  }
  if (upper === lower) return lower; // infinities of one sign have no difference
  return lower + (upper - lower) * share;
}
