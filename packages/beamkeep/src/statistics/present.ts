/** Room for the values of most calls. */
const room = new Float64Array(1 << 12);

/**
 * Where to copy so many values to, for a statistic that reorders them and lets go of them before it returns. Short
 * columns share one place: they come by the hundred thousand, and a new array costs more than the statistic itself.
 */
export const workspace = (length: number): Float64Array => (length <= room.length ? room : new Float64Array(length));

/**
 * Copies the values that are there: NaN is a missing value and left out.
 *
 * @param values numbers, NaN where missing
 * @param into takes them, from its beginning on
 * @returns how many there are
 */
export function copyPresent(values: ArrayLike<number>, into: Float64Array): number {
  return values instanceof Float64Array ? copyDoubles(values, into) : copyAny(values, into);
}

// The same loop twice: one that meets columns of doubles only is compiled for them.
function copyDoubles(values: Float64Array, into: Float64Array): number {
  let count = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    if (!Number.isNaN(value)) into[count++] = value;
  }
  return count;
}

function copyAny(values: ArrayLike<number>, into: Float64Array): number {
  let count = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    if (!Number.isNaN(value)) into[count++] = value;
  }
  return count;
}

/**
 * The values that are there, copied: NaN is a missing value and left out.
 *
 * @param values numbers, NaN where missing
 * @returns a new array that the caller may reorder
 */
export function present(values: ArrayLike<number>): Float64Array {
  const kept = new Float64Array(values.length);
  return kept.subarray(0, copyPresent(values, kept));
}
