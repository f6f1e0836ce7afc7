/**
 * Arithmetic mean.
 *
 * @param values numbers, NaN where missing (left out)
 * @returns NaN where no value is present
 *
 * Two passes: the second takes up what rounding lost in the first, so a large common part costs no digits.
 * @example mean([1, NaN, 3]) // 2
 */
export function mean(values: ArrayLike<number>): number {
  const first = meanOffset(values, 0);
  return Number.isFinite(first) ? first + meanOffset(values, first) : first;
}

/**
 * Standard deviation of a sample about its mean, divisor n - 1.
 *
 * @param values numbers, NaN where missing (left out)
 * @returns NaN where fewer than two values are present
 * @example standardDeviation([1, 2, 3]) // 1
 */
export function standardDeviation(values: ArrayLike<number>): number {
  const middle = mean(values);
  let squares = 0;
  let count = 0;
  for (let i = 0; i < values.length; i++) {
    const off = (values[i] as number) - middle;
    if (!Number.isNaN(off)) {
      squares += off * off;
      count++;
    }
  }
  return count < 2 ? Number.NaN : Math.sqrt(squares / (count - 1));
}

/** Mean of the present values less an offset. */
function meanOffset(values: ArrayLike<number>, offset: number): number {
  let sum = 0;
  let count = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    if (!Number.isNaN(value)) {
      sum += value - offset;
      count++;
    }
  }
  return sum / count;
}
