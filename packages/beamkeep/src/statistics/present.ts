/**
 * The values that are there, copied: NaN is a missing value and left out.
 *
 * @param values numbers, NaN where missing
 * @returns a new array that the caller may reorder
 */
export function present(values: ArrayLike<number>): Float64Array {
  const kept = new Float64Array(values.length);
  let count = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    if (!Number.isNaN(value)) kept[count++] = value;
  }
  return kept.subarray(0, count);
}
