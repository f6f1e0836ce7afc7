import { chiSquareQuantile } from '../statistics/index.js';

/**
 * Expected numbers that a count leaves possible: the exact interval of a Poisson count.
 *
 * @param count whole number, 0 or more
 * @param confidence 0 to 1, 0.95 when left out
 * @returns lowest and highest expected number; covers the true one at least as often as it claims
 *
 * Source: Garwood, Biometrika 28, 437-442, 1936: half the chi-square quantiles with 2n and 2n + 2 degrees of freedom
 * (from memory).
 * @example poissonInterval(0) // { low: 0, high: 3.689 }
 */
export function poissonInterval(count: number, confidence = 0.95): { low: number; high: number } {
  const tail = (1 - confidence) / 2;
  return {
    low: count === 0 ? 0 : chiSquareQuantile(tail, 2 * count) / 2,
    high: chiSquareQuantile(1 - tail, 2 * count + 2) / 2,
  };
}
