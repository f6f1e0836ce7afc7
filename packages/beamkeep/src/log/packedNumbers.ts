/*
 * Numbers in half the room. A reading of few decimals is a whole number over a power of ten, and the time of a sample
 * is whole milliseconds after the first: both fit into 32 bits. Each number is tried when it is packed, and where one
 * does not come back to the last bit, all stay as they are.
 */

/** Numbers that come back as they were. */
export type PackedNumbers =
  | { readonly whole: Int32Array; readonly per: number; readonly origin: number }
  | { readonly plain: Float64Array };

/** Stands for NaN among the whole numbers. */
const missing = -0x80000000;
const largest = 0x7fffffff;

/** Whole numbers a unit that are tried for readings, and for times in milliseconds. */
export const perReading = [1, 10, 100, 1000, 1e4, 1e5, 1e6] as const;
export const perMillisecond = [0.001, 1, 1000] as const;

/**
 * Packs the first `count` numbers.
 *
 * @param origin taken off each of them first
 * @param tried whole numbers a unit, the coarsest first
 */
export function packed(numbers: Float64Array, count: number, origin: number, tried: readonly number[]): PackedNumbers {
  const whole = new Int32Array(count);
  for (const per of tried) {
    let at = 0;
    for (; at < count; at++) {
      const number = numbers[at] as number;
      if (Number.isNaN(number)) {
        whole[at] = missing;
        continue;
      }
      const scaled = Math.round((number - origin) * per);
      if (!(Math.abs(scaled) <= largest && scaled / per + origin === number) || Object.is(number, -0)) break;
      whole[at] = scaled;
    }
    if (at === count) return { whole, per, origin };
  }
  return { plain: numbers.slice(0, count) };
}

/** Writes packed numbers into the beginning of `into`. */
export function unpack(numbers: PackedNumbers, into: Float64Array): void {
  if ('plain' in numbers) {
    into.set(numbers.plain);
    return;
  }
  const { whole, per, origin } = numbers;
  for (let at = 0; at < whole.length; at++) {
    const scaled = whole[at] as number;
    into[at] = scaled === missing ? Number.NaN : scaled / per + origin;
  }
}
