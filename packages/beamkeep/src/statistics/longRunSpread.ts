import { UsageError } from '../columns/index.js';
import { mean } from './moments.js';
import { medianAbsoluteDeviation } from './spread.js';

/**
 * Spread that independent noise would need in order to move long means as much as these values do.
 *
 * @param values evenly spaced rows, NaN where missing (left out)
 * @param block rows over which neighbours still resemble each other, 2 or more
 * @returns the spread of one value where neighbours are unrelated, more where they resemble each other; NaN where there
 *   are fewer than three blocks
 * @throws UsageError for a block that is not a whole number of rows
 *
 * From the differences of neighbouring block means, by their median size: a few steps and wild blocks do not move it,
 * and a slow slope hardly. Its square over the square of the spread is what a penalty for change points must be
 * multiplied by. Source: batch means, common practice, no source.
 * @example longRunSpread(hourlyLoss, 24)
 */
export function longRunSpread(values: ArrayLike<number>, block: number): number {
  if (!Number.isInteger(block) || block < 2) {
    throw new UsageError(`longRunSpread: block ${block} must be a whole number of rows, 2 or more`);
  }
  const blocks = Math.floor(values.length / block);
  if (blocks < 3) return Number.NaN;
  const means = Float64Array.from({ length: blocks }, (_, k) => {
    const rows = Float64Array.from({ length: block }, (_, i) => values[k * block + i] as number);
    return mean(rows);
  });
  const changes = means.slice(1).map((value, k) => value - (means[k] as number));
  return medianAbsoluteDeviation(changes, 0) * Math.sqrt(block / 2);
}
