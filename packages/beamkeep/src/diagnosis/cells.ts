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
  const gathered = new Gathered(trace, mask);
  let i = 0;
  for (let c = 0; c < length; c++) {
    row[c] = i;
    i = gathered.take(i, start + (c + 1) * width);
    level[c] = gathered.median();
  }
  row[length] = n;
  return { start, width, length, row, level };
}

/** The unmasked values of one cell after the other. */
class Gathered {
  private values = new Float64Array(1024);
  private weights = new Float64Array(1024);
  private used = 0;
  /** Whether each value stands for as many samples. */
  private even = true;

  constructor(
    private readonly trace: Trace,
    private readonly mask: Uint8Array | undefined,
  ) {}

  /** Takes the rows from `from` on that begin before `end`; gives the row behind them. */
  take(from: number, end: number): number {
    const { time, level, count } = this.trace;
    const { mask } = this;
    let to = from;
    while (to < time.length && (time[to] as number) < end) to++;
    if (to - from > this.values.length) {
      this.values = new Float64Array(2 * (to - from));
      this.weights = new Float64Array(2 * (to - from));
    }
    const { values, weights } = this;
    const first = count[from];
    let used = 0;
    let even = true;
    for (let i = from; i < to; i++) {
      if (mask !== undefined && mask[i] === 1) continue;
      values[used] = level[i] as number;
      weights[used++] = count[i] as number;
      if (count[i] !== first) even = false;
    }
    this.used = used;
    this.even = even;
    return to;
  }

  /** Their median, each as often as it stands for samples; NaN of none. */
  median(): number {
    if (this.used === 0) return Number.NaN;
    const own = this.values.subarray(0, this.used);
    return this.even ? median(own) : weightedMedian(own, this.weights.subarray(0, this.used));
  }
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
