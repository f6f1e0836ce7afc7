/**
 * Where a rising function passes 0: Newton's steps, kept inside a bracket that only shrinks.
 *
 * @param excess rising function
 * @param slope its derivative
 * @param low where excess is 0 or less
 * @param high where excess is 0 or more
 * @param start first guess
 */
export function rootBetween(
  excess: (x: number) => number,
  slope: (x: number) => number,
  low: number,
  high: number,
  start: number,
): number {
  let left = low;
  let right = high;
  let x = Math.min(Math.max(start, low), high);
  for (let round = 0; round < 1100; round++) {
    const value = excess(x);
    if (value === 0) return x;
    if (value < 0) left = x;
    else right = x;
    const newton = x - value / slope(x);
    const next = newton > left && newton < right ? newton : (left + right) / 2;
    if (Math.abs(next - x) <= 1e-15 * Math.abs(next) || next === left || next === right) return next;
    x = next;
  }
  return x;
}
