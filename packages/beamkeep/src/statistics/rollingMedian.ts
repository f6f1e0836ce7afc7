import { UsageError } from '../columns/index.js';

/**
 * Median of the rows about each row; at both ends the window shrinks to the rows that exist.
 *
 * @param values one number a row, NaN where missing (left out)
 * @param window rows in a window, 1 or more; an even window reaches one row further back than ahead
 * @returns one median a row; NaN where the whole window is missing
 * @throws UsageError for a window that is not a whole number of rows
 *
 * The window is kept sorted: a step costs a binary search and one block move, so windows of thousands stay quick.
 * Source: same windows as pandas rolling(window, center=True, min_periods=1).
 * @example rollingMedian([1, 9, 2, 3], 3) // 5, 2, 3, 2.5
 */
export function rollingMedian(values: ArrayLike<number>, window: number): Float64Array {
  if (!Number.isInteger(window) || window < 1) {
    throw new UsageError(`rollingMedian: window ${window} must be a whole number of rows, 1 or more`);
  }
  const rows = values.length;
  const medians = new Float64Array(rows);
  const sorted = new Float64Array(Math.min(window, rows) + 1);
  const back = Math.floor(window / 2);
  const ahead = window - back - 1;
  let count = 0;
  for (let row = -ahead; row < rows; row++) {
    const leaving = row - back - 1;
    if (leaving >= 0) count -= remove(sorted, count, values[leaving] as number);
    const entering = row + ahead;
    if (entering < rows) count += insert(sorted, count, values[entering] as number);
    if (row >= 0) medians[row] = middle(sorted, count);
  }
  return medians;
}

/** First place in the sorted values whose value is not below `value`. */
function placeOf(sorted: Float64Array, count: number, value: number): number {
  let low = 0;
  let high = count;
  while (low < high) {
    const half = (low + high) >>> 1;
    if ((sorted[half] as number) < value) low = half + 1;
    else high = half;
  }
  return low;
}

/** Puts a value into its place; tells how many were added (none where it is missing). */
function insert(sorted: Float64Array, count: number, value: number): 0 | 1 {
  if (Number.isNaN(value)) return 0;
  const place = placeOf(sorted, count, value);
  sorted.copyWithin(place + 1, place, count);
  sorted[place] = value;
  return 1;
}

/** Takes a value out; tells how many were removed (none where it was missing). */
function remove(sorted: Float64Array, count: number, value: number): 0 | 1 {
  if (Number.isNaN(value)) return 0;
  const place = placeOf(sorted, count, value);
  sorted.copyWithin(place, place + 1, count);
  return 1;
}

/** Median of the first `count` sorted values. */
function middle(sorted: Float64Array, count: number): number {
  if (count === 0) return Number.NaN;
  const half = count >>> 1;
  const upper = sorted[half] as number;
  return count % 2 === 1 ? upper : ((sorted[half - 1] as number) + upper) / 2;
}
