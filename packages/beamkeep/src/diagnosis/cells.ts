import { hour, minute, second, type Trace } from '../columns/index.js';
import { median } from '../statistics/index.js';

/*
 * Cells cut the log into equal pieces of time, an hour each (less in a short log), whose medians carry the slow
 * causes: an hour's median does not see a vehicle crossing the beam, a day's dirt shows in it all the same.
 */

/** Equal pieces of a log. Columns of equal length, one row a cell. */
export interface Cells {
  /** Start of the first cell [ms]. */
  readonly start: number;
  /** Length of a cell [ms]. */
  readonly width: number;
  readonly length: number;
  /** First row of the trace in each cell; one more entry at the end. */
  readonly row: Uint32Array;
  /** Median level of the cell's unmasked samples, share of clean air; NaN where there is none. */
  readonly level: Float64Array;
}

/** Twice the room, what was there kept. */
function widened(values: Float64Array): Float64Array<ArrayBuffer> {
  const wider = new Float64Array(2 * values.length);
  wider.set(values);
  return wider;
}

/** Lengths that a cell may have [ms]; each goes a whole number of times into a day. */
const widths = [
  ...[1, 2, 5, 10, 15, 20, 30].map((n) => n * second),
  ...[1, 2, 3, 5, 10, 15, 20, 30].map((n) => n * minute),
  ...[1, 2, 3, 4].map((n) => n * hour),
];

/** Middle of a cell [ms]. */
export const middle = (cells: Cells, cell: number): number => cells.start + (cell + 0.5) * cells.width;

/** The cell that holds an instant, kept within the log. */
export const cellAt = (cells: Cells, instant: number): number =>
  Math.min(cells.length - 1, Math.max(0, Math.floor((instant - cells.start) / cells.width)));

/**
 * Cuts a trace into cells: at least four samples each, an hour at most, a two-hundredth of a short log.
 *
 * @param trace the log, at least one row
 * @param intervalSeconds usual interval between samples [s]
 * @param offset what local time adds to UTC [ms], so that cells begin with the clock's hours
 * @param mask rows to leave out (1), or none
 */
export function cut(trace: Trace, intervalSeconds: number, offset: number, mask?: Uint8Array): Cells {
  const n = trace.time.length;
  const first = trace.time[0] as number;
  const last = trace.until[n - 1] as number;
  const wanted = Math.max(4 * intervalSeconds * 1000, Math.min(hour, (last - first) / 200));
  const width = widths.find((w) => w >= wanted) ?? 4 * hour;
  const start = Math.floor((first + offset) / width) * width - offset;
  const length = Math.floor((last - start) / width) + 1;
  const row = new Uint32Array(length + 1);
  const level = new Float64Array(length).fill(Number.NaN);
  let values = new Float64Array(1024);
  let weights = new Float64Array(1024);
  let i = 0;
  for (let c = 0; c < length; c++) {
    row[c] = i;
    const end = start + (c + 1) * width;
    let used = 0;
    let even = true;
    for (; i < n && (trace.time[i] as number) < end; i++) {
      if (mask !== undefined && mask[i] === 1) continue;
      if (used === values.length) {
        values = widened(values);
        weights = widened(weights);
      }
      values[used] = trace.level[i] as number;
      weights[used++] = trace.count[i] as number;
      if (trace.count[i] !== trace.count[row[c] as number]) even = false;
    }
    if (used === 0) continue;
    const own = values.subarray(0, used);
    level[c] = even ? median(own) : weightedMedian(own, weights.subarray(0, used));
  }
  row[length] = n;
  return { start, width, length, row, level };
}

/**
 * Median of values that stand for several samples each: where the weights below and above are even. Rearranges both.
 *
 * Quickselect by weight (Hoare's partition), linear on average.
 */
export function weightedMedian(values: Float64Array, weights: Float64Array): number {
  let total = 0;
  for (const w of weights) total += w;
  const half = total / 2;
  let low = 0;
  let high = values.length - 1;
  let below = 0;
  while (low < high) {
    const pivot = values[(low + high) >>> 1] as number;
    let i = low;
    let j = high;
    while (i <= j) {
      while ((values[i] as number) < pivot) i++;
      while ((values[j] as number) > pivot) j--;
      if (i > j) break;
      const v = values[i] as number;
      const w = weights[i] as number;
      values[i] = values[j] as number;
      weights[i] = weights[j] as number;
      values[j--] = v;
      weights[j + 1] = w;
      i++;
    }
    let left = 0;
    for (let k = low; k <= j; k++) left += weights[k] as number;
    let middle = 0;
    for (let k = j + 1; k < i; k++) middle += weights[k] as number;
    if (below + left > half) high = j;
    else if (below + left + middle > half) return pivot;
    else {
      below += left + middle;
      low = i;
    }
  }
  return values[Math.min(low, values.length - 1)] ?? Number.NaN;
}
