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
  const values: number[] = [];
  const weights: number[] = [];
  let i = 0;
  for (let c = 0; c < length; c++) {
    row[c] = i;
    const end = start + (c + 1) * width;
    values.length = 0;
    weights.length = 0;
    let even = true;
    for (; i < n && (trace.time[i] as number) < end; i++) {
      if (mask !== undefined && mask[i] === 1) continue;
      values.push(trace.level[i] as number);
      weights.push(trace.count[i] as number);
      if (trace.count[i] !== 1) even = false;
    }
    if (values.length > 0) level[c] = even ? median(values) : weightedMedian(values, weights);
  }
  row[length] = n;
  return { start, width, length, row, level };
}

/** Median of values that stand for several samples each. */
export function weightedMedian(values: readonly number[], weights: readonly number[]): number {
  const order = values.map((_, i) => i).sort((a, b) => (values[a] as number) - (values[b] as number));
  let total = 0;
  for (const w of weights) total += w;
  let below = 0;
  for (let k = 0; k < order.length; k++) {
    const i = order[k] as number;
    below += weights[i] as number;
    if (below === total / 2 && k + 1 < order.length) {
      return ((values[i] as number) + (values[order[k + 1] as number] as number)) / 2;
    }
    if (below > total / 2) return values[i] as number;
  }
  return Number.NaN;
}
