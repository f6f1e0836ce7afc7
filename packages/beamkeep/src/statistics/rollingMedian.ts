import { UsageError } from '../columns/index.js';

/**
 * Median of the rows about each row; at both ends the window shrinks to the rows that exist.
 *
 * @param values one number a row, NaN where missing (left out)
 * @param window rows in a window, 1 or more; an even window reaches one row further back than ahead
 * @returns one median a row; NaN where the whole window is missing
 * @throws UsageError for a window that is not a whole number of rows
 *
 * The window is kept sorted: a row that leaves makes room for the one that enters, and only what lies between their
 * places moves. Windows of thousands stay quick.
 * Source: same windows as pandas rolling(window, center=True, min_periods=1).
 * @example rollingMedian([1, 9, 2, 3], 3) // 5, 2, 3, 2.5
 */
export function rollingMedian(values: ArrayLike<number>, window: number): Float64Array {
  if (!Number.isInteger(window) || window < 1) {
    throw new UsageError(`rollingMedian: window ${window} must be a whole number of rows, 1 or more`);
  }
  const column = values instanceof Float64Array ? values : Float64Array.from(values);
  const rows = column.length;
  const medians = new Float64Array(rows);
  const sorted = new Float64Array(Math.min(window, rows) + 1);
  const back = Math.floor(window / 2);
  const ahead = window - back - 1;
  let count = 0;
  for (let row = -ahead; row < rows; row++) {
    if (row > back && count > 0 && count <= fewRows) {
      row = replaceOnwards(column, sorted, count, row, back, ahead, medians);
      if (row === rows) break;
    }
    const leaving = row > back ? (column[row - back - 1] as number) : Number.NaN;
    const entering = row + ahead < rows ? (column[row + ahead] as number) : Number.NaN;
    if (Number.isNaN(leaving)) {
      if (!Number.isNaN(entering)) insert(sorted, count++, entering);
    } else if (Number.isNaN(entering)) remove(sorted, count--, leaving);
    else {
      remove(sorted, count, leaving);
      insert(sorted, count - 1, entering);
    }
    if (row >= 0) medians[row] = middle(sorted, count);
  }
  return medians;
}

/** Rows up to which a walk over them is quicker than a search and a block move. */
const fewRows = 48;

/**
 * Medians from `first` on for as long as a present row enters for each present one that leaves: it takes its place, and
 * what lies between moves. One loop over the rows, without a call in it: calls would box every number.
 *
 * @param first more rows than the window reaches back
 * @returns the row where that ends
 */
function replaceOnwards(
  column: Float64Array,
  sorted: Float64Array,
  count: number,
  first: number,
  back: number,
  ahead: number,
  medians: Float64Array,
): number {
  const half = count >>> 1;
  const even = count % 2 === 0;
  const end = column.length - ahead;
  let row = first;
  for (; row < end; row++) {
    const leaving = column[row - back - 1] as number;
    const entering = column[row + ahead] as number;
    if (Number.isNaN(leaving) || Number.isNaN(entering)) break;
    let place = 0;
    while ((sorted[place] as number) < leaving) place++;
    if (entering > leaving) {
      for (; place + 1 < count && (sorted[place + 1] as number) < entering; place++) {
        sorted[place] = sorted[place + 1] as number;
      }
    } else {
      for (; place > 0 && (sorted[place - 1] as number) >= entering; place--) {
        sorted[place] = sorted[place - 1] as number;
      }
    }
    sorted[place] = entering;
    const upper = sorted[half] as number;
    medians[row] = even ? ((sorted[half - 1] as number) + upper) / 2 : upper;
  }
  return row;
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

/** Puts a value into its place. */
function insert(sorted: Float64Array, count: number, value: number): void {
  const place = placeOf(sorted, count, value);
  sorted.copyWithin(place + 1, place, count);
  sorted[place] = value;
}

/** Takes a value out. */
function remove(sorted: Float64Array, count: number, value: number): void {
  const place = placeOf(sorted, count, value);
  sorted.copyWithin(place, place + 1, count);
}

/** Median of the first `count` sorted values. */
function middle(sorted: Float64Array, count: number): number {
  if (count === 0) return Number.NaN;
  const half = count >>> 1;
  const upper = sorted[half] as number;
  return count % 2 === 1 ? upper : ((sorted[half - 1] as number) + upper) / 2;
}
