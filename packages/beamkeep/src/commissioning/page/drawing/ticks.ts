/**
 * Round numbers across a range: steps of 1, 2 or 5 times a power of ten.
 *
 * @param low,high the range, low below high
 * @param wanted about how many
 * @example ticks(0, 137, 5) // 0, 50, 100
 */
export function ticks(low: number, high: number, wanted: number): number[] {
  const rough = (high - low) / wanted;
  if (!(rough > 0) || !Number.isFinite(rough)) return [];
  const power = 10 ** Math.floor(Math.log10(rough));
  const step = power * ([1, 2, 5].find((factor) => factor * power >= rough) ?? 10);
  const first = Math.ceil(low / step - 1e-9);
  const last = Math.floor(high / step + 1e-9);
  return Array.from({ length: last - first + 1 }, (_, at) => Number(((first + at) * step).toPrecision(12)));
}
