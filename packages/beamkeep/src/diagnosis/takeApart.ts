import { hour } from '../columns/index.js';
import { median, quantile, rollingMedian } from '../statistics/index.js';
import { type Cells, cellAt, cut, middle } from './cells.js';
import { dailyCycle } from './dailyCycle.js';
import { courseNoise } from './noise.js';
import { cellOfStep, findSteps, type Step } from './steps.js';
import { lossOf, tenLog, type View } from './view.js';

/*
 * A beam's loss taken apart in decibels, where losses add:
 *
 *     loss = slow course (free between steps) + daily cycle + what is left
 *
 * What is left holds the fast events. Each part is fitted while the others are taken off, and the events are masked
 * before the last round, so that a mist does not bend the cycle and a cycle does not hide a step.
 */

/** What a log's cells show of it. */
export interface CellParts {
  readonly cells: Cells;
  /** Median loss of each cell, events masked [dB]; NaN where nothing is left. */
  readonly course: Float64Array;
  /** Slow course of each cell [dB]. */
  readonly slow: Float64Array;
  /** Daily cycle of each cell [dB]. */
  readonly cycle: Float64Array;
  readonly cycleFitted: boolean;
  readonly steps: readonly Step[];
  /** Spread of a cell's median about its smooth course [dB]. */
  readonly cellNoise: number;
}

/** The same, and what it leaves of each row. */
export interface Parts extends CellParts {
  /** What is left of each row's loss [dB]. */
  readonly left: Float64Array;
  /** Each row's loss with the daily cycle alone taken off [dB]: steps and all that is slow are still in it. */
  readonly offCycle: Float64Array;
}

export interface Guides {
  /** The cells under the mask, where they have been cut already. */
  readonly cells?: Cells;
  /** Rows that belong to events (1): seen neither by the slow course nor by the cycle. */
  readonly mask?: Uint8Array;
  /** Steps that are known already, and whether one that is found beside them may stand. */
  readonly known?: { readonly steps: readonly Step[]; readonly stands: (step: Step) => boolean };
  /** False when the daily repetition is no movement, so that it must stay in what is left. */
  readonly cycleAllowed: boolean;
}

/**
 * Takes a beam's loss apart.
 *
 * @param view the beam's record
 * @param leastStep smallest step that counts, share of clean air
 * @param guides what an earlier round has found
 */
export function takeApart(view: View, leastStep: number, guides: Guides): CellParts {
  const { trace } = view;
  const cells = guides.cells ?? cut(trace, view.interval / 1000, view.clock.offset(view.from), guides.mask);
  const course = cells.level.map((v) => (Number.isNaN(v) ? v : lossOf(v)));
  const base = median(course) || 0;
  const perDb = Math.exp(base / tenLog);
  const floor = (tenLog * perDb * Math.max(view.quantum / Math.sqrt(12), view.sampleNoise / 10)) / 2;
  const cellNoise = courseNoise(course, floor);
  const dayCells = Math.max(3, Math.round((25 * hour) / cells.width) | 1);
  // A log of a day or two holds no dirt to speak of, but it may hold a fire of hours: its clear level stands for all.
  const brief = cells.length * cells.width < briefest;
  let slow = brief ? clearLevel(course) : rollingMedian(course, dayCells);
  let cycle: Float64Array = new Float64Array(cells.length);
  let fitted = false;
  let steps: Step[] = [];
  // Without a cycle the second round would only say the first again.
  for (let round = 0; round < (guides.cycleAllowed ? 3 : 1); round++) {
    if (guides.cycleAllowed) {
      const even = evened(slow, bordersOf(cells, trace.time, steps), dayCells >> 1);
      const daily = dailyCycle(cells, minus(course, even), cellNoise);
      cycle = daily.loss;
      fitted = daily.fitted;
    }
    const flat = minus(course, cycle);
    const rowsLeft = (from: number, to: number) => offCycle(view, cells, cycle, from, to);
    const leastDecibels = tenLog * perDb * leastStep;
    const found = findSteps(trace.time, rowsLeft, cells, flat, leastDecibels, swayAbout(cells, cycle));
    steps = guides.known === undefined ? found : joined(trace.time, guides.known, found);
    slow = slowCourse(cells, flat, trace.time, steps, brief ? undefined : dayCells);
  }
  return { cells, course, slow, cycle, cycleFitted: fitted, steps, cellNoise };
}

/** Each row as well. */
export const withRows = (view: View, parts: CellParts): Parts => ({
  ...parts,
  left: leftOf(view, parts),
  offCycle: offCycle(view, parts.cells, parts.cycle, 0, view.loss.length),
});

/** Time within which what is found by the hours and known by the samples is one step [ms]: what was knocked may slip on. */
const slips = 12 * hour;

/** The steps that are known, and what was found beside them. */
const joined = (
  time: Float64Array,
  { steps: known, stands }: NonNullable<Guides['known']>,
  found: readonly Step[],
): Step[] =>
  [
    ...known,
    ...found.filter(
      (f) =>
        stands(f) &&
        known.every(
          (k) =>
            Math.sign(k.loss) !== Math.sign(f.loss) ||
            Math.abs((time[k.row] as number) - (time[f.row] as number)) > slips,
        ),
    ),
  ].sort((a, b) => a.row - b.row);

/** Swing of the daily cycle in the day about each cell [dB]. */
function swayAbout(cells: Cells, cycle: Float64Array): Float64Array {
  const half = Math.max(1, Math.round((12 * hour) / cells.width));
  const sway = new Float64Array(cells.length);
  for (let from = 0; from < cells.length; from += half) {
    sway.fill(swing(cycle, Math.max(0, from - half), Math.min(cells.length, from + 2 * half)), from, from + half);
  }
  return sway;
}

/** Greatest less least of places `from` to `to` (excluded). */
export function swing(values: Float64Array, from: number, to: number): number {
  let least = Number.POSITIVE_INFINITY;
  let most = Number.NEGATIVE_INFINITY;
  for (let i = from; i < to; i++) {
    least = Math.min(least, values[i] as number);
    most = Math.max(most, values[i] as number);
  }
  return most - least;
}

const minus = (a: Float64Array, b: Float64Array): Float64Array => a.map((v, i) => v - (b[i] as number));

/** Shortest log whose slow course is followed from day to day [ms]. */
const briefest = 60 * hour;

/** The loss of the clearest fifth of a series, for every place in it. */
const clearLevel = (course: Float64Array): Float64Array => {
  const clear = quantile(course, 0.2);
  return new Float64Array(course.length).fill(Number.isNaN(clear) ? 0 : clear);
};

/** Rolling median of a day, free to jump at each step, with holes bridged. */
function slowCourse(
  cells: Cells,
  flat: Float64Array,
  time: Float64Array,
  steps: readonly Step[],
  window: number | undefined,
): Float64Array {
  const slow = new Float64Array(cells.length);
  const borders = bordersOf(cells, time, steps);
  for (let k = 0; k + 1 < borders.length; k++) {
    const from = borders[k] as number;
    const to = borders[k + 1] as number;
    if (to <= from) continue;
    // The cell with the step in it is mixed: it is left out of both sides.
    const piece = flat.slice(from, to);
    if (k > 0 && piece.length > 2) piece[0] = Number.NaN;
    const middle = window === undefined ? clearLevel(piece) : bridge(rollingMedian(piece, window), median(piece));
    slow.set(middle, from);
  }
  return slow;
}

/** First cells of the pieces between steps, and the number of cells. */
const bordersOf = (cells: Cells, time: Float64Array, steps: readonly Step[]): number[] => [
  0,
  ...steps.map((s) => cellOfStep(cells, time, s)),
  cells.length,
];

/**
 * A slow course without the stairs that a day's median cuts into a slope which sways: mean of the day about each cell,
 * as far to one side as to the other and never across a border.
 */
function evened(slow: Float64Array, borders: readonly number[], half: number): Float64Array {
  const sum = new Float64Array(slow.length + 1);
  for (let c = 0; c < slow.length; c++) sum[c + 1] = (sum[c] as number) + (slow[c] as number);
  const even = new Float64Array(slow.length);
  for (let k = 0; k + 1 < borders.length; k++) {
    const from = borders[k] as number;
    const to = borders[k + 1] as number;
    for (let c = from; c < to; c++) {
      const reach = Math.min(half, c - from, to - 1 - c);
      even[c] = ((sum[c + reach + 1] as number) - (sum[c - reach] as number)) / (2 * reach + 1);
    }
  }
  return even;
}

/** Fills missing values with the nearest known one before, or after; `otherwise` when there is none at all. */
export function bridge(values: Float64Array, otherwise: number): Float64Array {
  const filled = Float64Array.from(values);
  let last = Number.NaN;
  for (let i = 0; i < filled.length; i++) {
    if (Number.isNaN(filled[i] as number)) filled[i] = last;
    else last = filled[i] as number;
  }
  last = Number.isNaN(otherwise) ? 0 : otherwise;
  for (let i = filled.length - 1; i >= 0; i--) {
    if (Number.isNaN(filled[i] as number)) filled[i] = last;
    else last = filled[i] as number;
  }
  return filled;
}

/** How many cells a row's middle lies behind the middle of the first: whole where it is the middle of a cell. */
const placeOf = (time: number, until: number, start: number, width: number): number =>
  ((time + until) / 2 - start) / width - 0.5;

/** The loss of rows `from` to `to` (excluded) with the cycle taken off, straight between middles of cells. */
export function offCycle(
  { trace, loss }: View,
  { start, width, length: cells }: Cells,
  cycle: Float64Array,
  from: number,
  to: number,
): Float64Array {
  const { time, until } = trace;
  const off = new Float64Array(to - from);
  for (let i = from; i < to; i++) {
    const place = placeOf(time[i] as number, until[i] as number, start, width);
    const c = Math.min(cells - 1, Math.max(0, Math.floor(place)));
    const on = Math.min(1, Math.max(0, place - c));
    const next = Math.min(cells - 1, c + 1);
    off[i - from] = (loss[i] as number) - ((cycle[c] as number) * (1 - on) + (cycle[next] as number) * on);
  }
  return off;
}

/** The loss of each row with the slow course taken off as well, which is its own between two steps [dB]. */
export function leftOf(view: View, parts: CellParts): Float64Array {
  const { cells, steps } = parts;
  const { time } = view.trace;
  const left = new Float64Array(view.loss.length);
  const last = cells.length - 1;
  for (let step = 0; step <= steps.length; step++) {
    const before = steps[step - 1];
    const after = steps[step];
    // The cells that hold the steps belong to neither side.
    const from = before === undefined ? 0 : Math.min(last, cellOfStep(cells, time, before) + 1);
    const to = Math.max(from, after === undefined ? last : cellOfStep(cells, time, after) - 1);
    offSlow(view, parts, left, { from: before?.row ?? 0, to: after?.row ?? left.length }, { from, to });
  }
  return left;
}

/** Puts into `left` what the cycle and the slow course of some cells leave of rows. */
function offSlow(
  { trace, loss }: View,
  { cells, cycle, slow }: CellParts,
  left: Float64Array,
  rows: { readonly from: number; readonly to: number },
  own: { readonly from: number; readonly to: number },
): void {
  const { time, until } = trace;
  const { start, width, length } = cells;
  const { from, to } = own;
  const end = rows.to;
  for (let i = rows.from; i < end; i++) {
    const place = placeOf(time[i] as number, until[i] as number, start, width);
    const c = Math.min(length - 1, Math.max(0, Math.floor(place)));
    const on = Math.min(1, Math.max(0, place - c));
    const next = Math.min(length - 1, c + 1);
    const a = Math.min(to, Math.max(from, c));
    const b = Math.min(to, Math.max(from, next));
    const part = (cycle[c] as number) * (1 - on) + (cycle[next] as number) * on;
    left[i] = (loss[i] as number) - (part + ((slow[a] as number) * (1 - on) + (slow[b] as number) * on));
  }
}

/** Value of a series of cells at an instant, straight between middles, kept within the cells `from` to `to`. */
export function between(cells: Cells, values: Float64Array, instant: number, from: number, to: number): number {
  const c = cellAt(cells, instant - cells.width / 2);
  const a = Math.min(to, Math.max(from, c));
  const b = Math.min(to, Math.max(from, c + 1));
  const share = Math.min(1, Math.max(0, (instant - middle(cells, c)) / cells.width));
  return (values[a] as number) * (1 - share) + (values[b] as number) * share;
}
