/**
 * Pairs of which the earlier value is the greater, counted while merging.
 *
 * @param values one a row, without NaN; left sorted
 * @param spare as long; overwritten
 * @param equalToo whether pairs of equal values count as well
 */
export function inversions(values: Float64Array, spare: Float64Array, equalToo: boolean): number {
  let count = 0;
  let from = values;
  let into = spare;
  for (let width = 1; width < values.length; width *= 2) {
    for (let start = 0; start < values.length; start += 2 * width) {
      const middle = Math.min(start + width, values.length);
      const end = Math.min(start + 2 * width, values.length);
      let left = start;
      let right = middle;
      for (let place = start; place < end; place++) {
        const a = left < middle ? (from[left] as number) : Number.POSITIVE_INFINITY;
        const b = right < end ? (from[right] as number) : Number.POSITIVE_INFINITY;
        const leftFirst = right === end || (left < middle && (equalToo ? a < b : a <= b));
        if (leftFirst) {
          into[place] = a;
          left++;
        } else {
          into[place] = b;
          right++;
          count += middle - left;
        }
      }
    }
    [from, into] = [into, from];
  }
  if (from !== values) values.set(from);
  return count;
}

/** Number of equal values in each group of two or more, the values sorted. */
export function tiesOf(sorted: Float64Array): number[] {
  const ties: number[] = [];
  for (let from = 0; from < sorted.length; ) {
    let to = from + 1;
    while (to < sorted.length && sorted[to] === sorted[from]) to++;
    if (to - from > 1) ties.push(to - from);
    from = to;
  }
  return ties;
}
