import { normalProbability } from '../distributions/normal.js';
import { present } from '../present.js';
import { inversions, tiesOf } from './inversions.js';

/** Whether values tend upwards or downwards in the order given. */
export interface MannKendall {
  /** Pairs that rise less pairs that fall. */
  readonly s: number;
  /** Variance of s where nothing tends anywhere; ties make it smaller. */
  readonly variance: number;
  /** s in standard deviations, a step of one taken off; 0 where s is 0. */
  readonly z: number;
  /** Chance of an s at least so far from 0 where nothing tends anywhere, both sides. */
  readonly p: number;
  /** Values that took part. */
  readonly n: number;
}

/**
 * Mann and Kendall's test for a trend of any shape.
 *
 * @param values in order of time, NaN where missing (left out)
 *
 * Takes the values as independent: neighbours that resemble each other make p too small. Below ten values without ties
 * p is exact, else by the normal distribution. Time grows as n log n.
 * Source: EPA QA/G-9S, Data Quality Assessment: Statistical Methods for Practitioners, p. 109.
 * @example mannKendall([10, 10, 10, 5, 10, 20, 18, 17, 15, 24, 15]).s // 22
 */
export function mannKendall(values: ArrayLike<number>): MannKendall {
  const kept = present(values);
  const n = kept.length;
  const falling = inversions(kept, new Float64Array(n), false);
  const ties = tiesOf(kept);
  const level = ties.reduce((sum, tied) => sum + (tied * (tied - 1)) / 2, 0);
  const s = (n * n - n) / 2 - level - 2 * falling;
  const spread = (count: number) => (count * count - count) * (2 * count + 5);
  const variance = (spread(n) - ties.reduce((sum, tied) => sum + spread(tied), 0)) / 18;
  const z = s === 0 ? 0 : (s - Math.sign(s)) / Math.sqrt(variance);
  const p =
    n < 10 && ties.length === 0
      ? Math.min(1, 2 * mannKendallTail(n, Math.abs(s)))
      : Math.min(1, 2 * normalProbability(-Math.abs(z)));
  return { s, variance, z, p, n };
}

/**
 * Chance that s is so great or greater where all orders of the values are equally likely and none are tied.
 *
 * @param n number of values
 * @param s pairs that rise less pairs that fall
 * @example mannKendallTail(8, 16) // 0.0305
 */
export function mannKendallTail(n: number, s: number): number {
  // share of the orders of k values with so many falling pairs: the k-th value adds 0 to k - 1 of them, equally likely
  let shares = [1];
  for (let k = 2; k <= n; k++) {
    const next = new Array<number>(shares.length + k - 1).fill(0);
    shares.forEach((share, falling) => {
      for (let added = 0; added < k; added++) next[falling + added] = (next[falling + added] as number) + share / k;
    });
    shares = next;
  }
  const pairs = (n * (n - 1)) / 2;
  return shares.reduce((sum, share, falling) => (pairs - 2 * falling >= s ? sum + share : sum), 0);
}
