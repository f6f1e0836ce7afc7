import { hour, rowAt } from '../columns/index.js';
import { median, medianAbsoluteDeviation, quantile } from '../statistics/index.js';
import { type Cells, cellAt, middle } from './cells.js';

/*
 * Steps: places where the level changes at once and stays changed. A candidate is a cell border across which the
 * medians of six hours and of a day both jump by the same sign; the samples about it then say where exactly, and
 * whether the change was sharp. A slope, a daily cycle and a dip of some hours pass none of the three.
 */

/** A change of level, at once and kept. */
export interface Step {
  /** First row of the trace after the change. */
  readonly row: number;
  /** Change of loss [dB]: positive when light was lost. */
  readonly loss: number;
}

/** Share of the daily swing that a step must pass. */
const swayLeft = 0.3;
const near = 6 * hour;
const far = 24 * hour;
/** Share of the jump that must fall between one handful of samples and the next. */
const sharpShare = 0.6;

/**
 * Finds steps.
 *
 * @param time instants of the rows [ms]
 * @param lossOf loss of rows `from` to `to` (excluded) with the daily cycle taken off [dB]; asked for near borders only
 * @param cells the cells over the same rows
 * @param course median of that loss in each cell [dB]; NaN is missing
 * @param least smallest change that counts [dB]
 * @param sway swing of the daily cycle about each cell [dB]: its fit leaves a part of it behind
 */
export function findSteps(
  time: Float64Array,
  lossOf: (from: number, to: number) => Float64Array,
  cells: Cells,
  course: Float64Array,
  least: number,
  sway: Float64Array,
): Step[] {
  const n = cells.length;
  const short = Math.max(3, Math.round(Math.min(near, (n * cells.width) / 12) / cells.width));
  const long = Math.max(short + 1, Math.round(Math.min(far, (n * cells.width) / 4) / cells.width));
  const jump = new Float64Array(n).fill(Number.NaN);
  for (let c = 2; c < n - 1; c++) jump[c] = acrossBorder(course, c, short);
  // Where the cycle is taken off badly, borders jump everywhere: what is common is no step.
  const week = Math.max(long, Math.round((7 * far) / cells.width));
  const common = medianAbsoluteDeviation(jump, 0) || 0;
  const steps: Step[] = [];
  for (let c = 2; c < n - 1; c++) {
    const j = jump[c] as number;
    if (!(Math.abs(j) >= 0.8 * Math.max(least, 4 * common)) || !isPeak(jump, c, short)) continue;
    const about = medianAbsoluteDeviation(jump.subarray(Math.max(0, c - week), c + week), 0) || 0;
    const limit = Math.max(least, 4 * common, 4 * about, swayLeft * (sway[c] as number));
    if (Math.abs(j) < 0.8 * limit) continue;
    const step = sharpen(time, lossOf, cells, c, limit);
    if (step === undefined || Math.sign(step.loss) !== Math.sign(j)) continue;
    // Asked at the step itself: a few cells beside it, half a day of an object in the path would tip the median.
    const border = cellAt(cells, time[step.row] as number);
    const lasting = acrossBorder(course, border, long);
    if (!(Math.abs(lasting) >= 0.6 * limit) || Math.sign(lasting) !== Math.sign(j)) continue;
    // Mist and dust come and go, but leave the clearest hours as they were; a step moves those too.
    const clearest = acrossBorder(course, border, long, 0.15);
    if (Math.sign(clearest) * Math.sign(j) > 0 && Math.abs(clearest) >= 0.5 * Math.abs(step.loss)) steps.push(step);
  }
  return merge(steps);
}

/** Jump of a quantile of `k` cells before and after a border [dB]; the cell with the step in it is on neither side. */
function acrossBorder(course: Float64Array, border: number, k: number, share = 0.5): number {
  const before = quantile(course.subarray(Math.max(0, border - k), border), share);
  const after = quantile(course.subarray(share === 0.5 ? border : border + 1, border + k), share);
  return after - before;
}

function isPeak(jump: Float64Array, at: number, reach: number): boolean {
  const size = Math.abs(jump[at] as number);
  for (let c = Math.max(0, at - reach); c <= Math.min(jump.length - 1, at + reach); c++) {
    const other = Math.abs(jump[c] as number);
    if (other > size || (other === size && c < at)) return false;
  }
  return true;
}

/** Spreads of chance that a step must stand clear of where the samples about it are all that is asked. Own choice. */
const clearAlone = 5;
/** Rows beside a border whose middle is asked for. */
const beside = 4;

/** Finds the samples about a border between which the change falls; nothing when it is not sharp. */
function sharpen(
  time: Float64Array,
  lossOf: (from: number, to: number) => Float64Array,
  cells: Cells,
  border: number,
  least: number,
): Step | undefined {
  const at = middle(cells, border) - cells.width / 2;
  const reach = 3.5 * cells.width;
  const from = rowAt(time, at - reach);
  const to = rowAt(time, at + reach);
  if (to - from < 6) return undefined;
  // A few rows more on either side: the change may fall next to the end of the stretch.
  const first = Math.max(0, from - beside);
  const loss = lossOf(first, Math.min(time.length, to + beside));
  const step = sharpChange(loss, from - first, to - first, least, clearAlone);
  return step && { row: first + step.row, loss: step.loss };
}

/**
 * The place where a series changes at once; nothing when it does not, or when it grew rather than jumped.
 *
 * @param loss the series [dB], without gaps
 * @param from first value that is searched; a few before it may be given as well
 * @param to the value after the last that is searched
 * @param least smallest change that counts [dB]
 * @param clear spreads of the difference of two handfuls that it must stand clear of
 * @returns the first value after the change
 */
export function sharpChange(
  loss: Float64Array,
  from: number,
  to: number,
  least: number,
  clear: number,
): Step | undefined {
  const handful = Math.max(3, Math.min(12, Math.floor((to - from) / 6)));
  const y = loss.subarray(from, to);
  // Two constants that fit best, on values held within the quarters so that a spike does not draw the border.
  const low = Math.min(median(y.subarray(0, handful)), median(y.subarray(y.length - handful)));
  const high = Math.max(median(y.subarray(0, handful)), median(y.subarray(y.length - handful)));
  const room = Math.max(least, high - low) / 2;
  const held = y.map((v) => Math.min(high + room, Math.max(low - room, v)));
  const sum = new Float64Array(held.length + 1);
  for (let i = 0; i < held.length; i++) sum[i + 1] = (sum[i] as number) + (held[i] as number);
  const total = sum[held.length] as number;
  let best = -1;
  let most = 0;
  for (let i = 2; i <= held.length - 2; i++) {
    const left = sum[i] as number;
    const gap = (total - left) / (held.length - i) - left / i;
    const size = (gap * gap * i * (held.length - i)) / held.length;
    if (size > most) {
      most = size;
      best = i;
    }
  }
  if (best < 0) return undefined;
  const before = median(y.subarray(Math.max(0, best - handful), best));
  const after = median(y.subarray(best, best + handful));
  const wide = median(y.subarray(best, best + 3 * handful)) - median(y.subarray(Math.max(0, best - 3 * handful), best));
  const sharp = after - before;
  if (Math.abs(sharp) < Math.max(0.7 * least, sharpShare * Math.abs(wide))) return undefined;
  // The middles of two handfuls differ by chance: a step must stand clear of that.
  if (Math.abs(sharp) < clear * middlesBySpread * Math.sqrt(2 / handful) * spreadOfNeighbours(y)) return undefined;
  // A steep course jumps from handful to handful as well: the lines on either side must not meet at the border.
  const apart = lineAt(y.subarray(best), -0.5) - lineAt(y.subarray(0, best), best - 0.5);
  if (Math.sign(apart) !== Math.sign(sharp) || Math.abs(apart) < Math.max(0.6 * least, linesApart * Math.abs(sharp))) {
    return undefined;
  }
  // The rows just either side must already stand at their own level: two rows may lie between.
  const inner =
    median(loss.subarray(from + best + 1, from + best + 4)) -
    median(loss.subarray(Math.max(0, from + best - 4), from + best - 1));
  if (Math.abs(inner) < 0.5 * Math.abs(sharp)) return undefined;
  if (sharp > 0 && grew(y, best, before, after)) return undefined;
  return { row: from + best, loss: sharp };
}

/**
 * Share of the jump by which a sample between two levels must stand off the one before and the one after, and spreads of
 * the samples on that side: own choice.
 */
const offBefore = 0.04;
const offAfter = 0.15;
const clearOf = 4;

/**
 * Whether a loss went over more samples than the one that a mean over an instant of change may leave between two levels:
 * growth, which may be smoke that stays, and no step.
 */
function grew(y: Float64Array, border: number, before: number, after: number): boolean {
  const jump = after - before;
  // Each side by its own spread: smoke is rougher than the clear air before it.
  const least = Math.max(offBefore * jump, clearOf * spreadOfNeighbours(y.subarray(0, border - 1)));
  const most = Math.max(offAfter * jump, clearOf * spreadOfNeighbours(y.subarray(border + 1)));
  let from = border;
  while (from > 0 && (y[from - 1] as number) - before > least) from--;
  let to = border;
  while (to < y.length && after - (y[to] as number) > most) to++;
  return to - from >= 2;
}

/** Share of the jump by which the lines on either side must miss each other. */
const linesApart = 0.5;

/** Value at a place of the least-squares line through evenly spaced values. */
export function lineAt(values: Float64Array, place: number): number {
  const n = values.length;
  const middle = (n - 1) / 2;
  let sum = 0;
  let slope = 0;
  for (let i = 0; i < n; i++) {
    sum += values[i] as number;
    slope += (i - middle) * (values[i] as number);
  }
  const spread = (n * (n * n - 1)) / 12;
  return sum / n + (spread > 0 ? (slope / spread) * (place - middle) : 0);
}

/** Spread of the median of normal values over that of their mean: the root of pi / 2. */
const middlesBySpread = Math.sqrt(Math.PI / 2);

/** Spread of single values about a smooth course, from differences of neighbours. */
const spreadOfNeighbours = (y: Float64Array): number => {
  const steps = new Float64Array(Math.max(0, y.length - 1));
  for (let i = 0; i < steps.length; i++) steps[i] = (y[i + 1] as number) - (y[i] as number);
  return (medianAbsoluteDeviation(steps, 0) || 0) / Math.SQRT2;
};

/** Steps a few rows apart are one. */
export function merge(steps: readonly Step[]): Step[] {
  const merged: Step[] = [];
  for (const step of steps) {
    const last = merged.at(-1);
    if (last !== undefined && step.row - last.row <= 2) {
      merged[merged.length - 1] = Math.abs(step.loss) > Math.abs(last.loss) ? step : last;
    } else merged.push(step);
  }
  return merged;
}

/** The cell whose border lies nearest to a step. */
export const cellOfStep = (cells: Cells, time: Float64Array, step: Step): number =>
  cellAt(cells, time[step.row] as number);
