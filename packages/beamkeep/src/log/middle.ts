/**
 * Median of the first `count` numbers, which are reordered: selection by halves (Hoare 1961, "Find"), linear on
 * average. Of an even number the mean of the two in the middle; NaN of none.
 *
 * @param work without NaN
 */
export function middle(work: Float64Array, count: number): number {
  if (count === 0) return Number.NaN;
  const half = count >> 1;
  let left = 0;
  let right = count - 1;
  while (left < right) {
    const pivot = work[(left + right) >> 1] as number;
    let i = left;
    let j = right;
    while (i <= j) {
      while ((work[i] as number) < pivot) i++;
      while ((work[j] as number) > pivot) j--;
      if (i <= j) {
        const swapped = work[i] as number;
        work[i] = work[j] as number;
        work[j] = swapped;
        i++;
        j--;
      }
    }
    if (j < half) left = i;
    if (half < i) right = j;
  }
  const upper = work[half] as number;
  if (count & 1) return upper;
  let below = work[0] as number;
  for (let i = 1; i < half; i++) if ((work[i] as number) > below) below = work[i] as number;
  return (below + upper) / 2;
}
