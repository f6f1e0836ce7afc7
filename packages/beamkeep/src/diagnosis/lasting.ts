import { day } from '../columns/index.js';
import { median, quantile } from '../statistics/index.js';
import { type Cells, cellAt } from './cells.js';
import { lineAt, type Step, sharpChange } from './steps.js';

/*
 * Steps that show from one day to the next. A change that stays moves every hour of the day against the same hour of
 * the day before, by the same amount; a daily cycle, mist, dust, a lamp or the sun moves some hours only, or moves them
 * every day. So the day after a change is held against the day before it, hour by hour, with no cycle taken off that may
 * have been fitted badly, and the shift is held against the shifts of the days about it. The samples about the change
 * say where it fell and whether it was sharp. What leaves the beam after a gap, an object or a stuck reading is found
 * across it.
 */

/** Shares of the jump that the day must have shifted by: its quarter that shifted least, and its middle. Own choice. */
const leastQuarter = 0.5;
const leastMiddle = 0.55;
/** Times the step that a day's shift may be: more is not this step. */
const mostMiddle = 3;
/** Times the shifts of the days about it by which a day's shift must stand out: its middle, and its quarter. */
const standsOut = 4;
const quarterStandsOut = 3;
/** Share of the day's hours that must be seen on both days. */
const leastHours = 0.4;
/** Share of the day's hours under which nothing is known of the day after. */
const fewHours = 0.2;
/** Days on either side whose shifts are usual ones. */
const neighbours = [-3, -2, -1, 1, 2, 3];

/** How the day after a border stands against the day before it. */
export interface DayShift {
  /** Hours seen on both days, as a share of the day. */
  readonly hours: number;
  /** Shift of the quarter of the hours that shifted least, and of the middle, towards `sign` [dB]; the trend of the days about taken off. */
  readonly quarter: number;
  readonly middle: number;
  /** How much the days about it shift as a rule [dB]. */
  readonly usual: number;
}

/**
 * Measures how the day after a border stands against the day before it.
 *
 * @param course loss of each cell [dB]; NaN is missing
 * @param perDay cells to the day
 * @param border the cell with the change in it, on neither side
 * @param sign 1 for a loss, -1 for a gain
 */
export function dayShift(course: Float64Array, perDay: number, border: number, sign: number): DayShift {
  const own = shifts(course, perDay, border);
  const about = neighbours
    .map((k) => shifts(course, perDay, border + k * perDay))
    .filter(({ length }) => length >= leastHours * perDay)
    .map((hours) => median(hours));
  const trend = about.length > 0 ? median(about) : 0;
  const sizes = about.map((v) => Math.abs(v - trend)).sort((a, b) => b - a);
  const shifted = own.map((v) => sign * (v - trend));
  return {
    hours: own.length / perDay,
    quarter: quantile(shifted, 0.25),
    middle: median(shifted),
    // One of them may hold a step of its own.
    usual: sizes[1] ?? 0,
  };
}

/**
 * What each hour of the day after a border lost against the same hour of the day before: the first and the last time that
 * the hour was seen, some days off where a gap lies between.
 */
function shifts(course: Float64Array, perDay: number, border: number): Float64Array {
  const seen: number[] = [];
  for (let hour = 1; hour < perDay; hour++) {
    const after = firstSeen(course, border + hour, perDay);
    const before = firstSeen(course, border + hour - perDay, -perDay);
    if (after !== undefined && before !== undefined) seen.push(after - before);
  }
  return Float64Array.from(seen);
}

/** Days through which an hour is sought that a gap has hidden. */
const gapDays = 4;

/** The first value that was seen, from a cell on by so many cells a time. */
function firstSeen(course: Float64Array, from: number, by: number): number | undefined {
  for (let k = 0, c = from; k < gapDays; k++, c += by) {
    const value = course[c];
    if (value !== undefined && !Number.isNaN(value)) return value;
  }
  return undefined;
}

/** Whether the day after a change stands off the day before it as a step that stays makes it. */
export const staysByDay = ({ hours, quarter, middle, usual }: DayShift, size: number): boolean =>
  hours >= leastHours &&
  quarter >= leastQuarter * size &&
  middle >= leastMiddle * size &&
  middle <= mostMiddle * size &&
  middle >= standsOut * usual &&
  quarter >= quarterStandsOut * usual;

/**
 * Whether the day after a change speaks against a step: the hours went on as before, or such shifts are usual. Too few
 * hours to tell, at an end of the log or beside a gap, speak against it as well.
 */
export const fadesByDay = ({ hours, quarter, middle, usual }: DayShift, size: number): boolean =>
  hours < fewHours ||
  (hours >= leastHours &&
    (quarter < 0.6 * leastQuarter * size ||
      middle < 0.6 * leastMiddle * size ||
      quarter < 0.85 * quarterStandsOut * usual));

/** What the search goes through. */
export interface Searched {
  /** Instants of the rows [ms]. */
  readonly time: Float64Array;
  /** Rows that tell nothing (1): an object in the path, a stuck reading. */
  readonly hidden: Uint8Array;
  readonly cells: Cells;
  /** Median loss of each cell [dB], nothing taken off; NaN is missing. */
  readonly course: Float64Array;
  /** Loss of each row and of each cell [dB], as it stands or with a cycle taken off: a step shows in one of them. */
  readonly series: readonly { readonly rows: Float64Array; readonly cells: Float64Array }[];
}

/** Share of the least change that must come at once, and how many times what came at once the day may make of it. Own choice. */
const sharpShare = 0.6;
const slipsOn = 1.6;
/** Spreads of chance that the samples must show, where the day has to show it as well. Own choice. */
const clearByDay = 3;
/** The same where the day shows it this many times better than days do as a rule. */
const clearWherePlain = 1.5;
const plainly = 6;

/** Rows on either side of a border that are looked at, at least. */
const leastRows = 16;

/**
 * Finds steps that show from one day to the next.
 *
 * @param least smallest change that counts [dB]
 */
export function lastingSteps(searched: Searched, least: number): Step[] {
  const { time, hidden, cells, course, series } = searched;
  const perDay = Math.round(day / cells.width);
  const steps: Step[] = [];
  if (cells.length < 2 * perDay) return steps;
  for (const { rows: loss, cells: flat } of series) {
    for (const [before, after] of jumps(flat, sharpShare * least)) {
      const rows = openRows(hidden, cells.row[Math.max(0, before - 1)] as number, cells.row[after + 2] ?? time.length);
      const values = valuesAt(loss, rows);
      const sharp = (clear: number) => sharpChange(values, 0, values.length, sharpShare * least, clear);
      const change = sharp(clearWherePlain);
      if (change === undefined) continue;
      const about = (flat[after] as number) > (flat[before] as number) ? 1 : -1;
      const shown = dayShift(course, perDay, (before + after) >> 1, about);
      const plain = shown.middle >= least && shown.quarter >= plainly * shown.usual;
      if (!plain && sharp(clearByDay) === undefined) continue;
      const row = rows[change.row] as number;
      const at = cellAt(cells, time[row] as number);
      // The same change, seen once already.
      if (steps.some((s) => Math.abs(s.row - row) <= 2 || Math.abs(cellAt(cells, time[s.row] as number) - at) <= 1))
        continue;
      const size = Math.abs(change.loss);
      const sign = Math.sign(change.loss);
      const shift = dayShift(course, perDay, at, sign);
      if (!staysByDay(shift, size) || shift.middle < least) continue;
      // What was knocked may slip on within the day.
      steps.push({ row, loss: sign * Math.min(Math.max(size, shift.middle), slipsOn * size) });
    }
  }
  return steps.sort((a, b) => a.row - b.row);
}

/** Rows on either side of a step through which lines are laid, and share of it by which they must miss. Own choice. */
const lineRows = 10;
const leastAtOnce = 0.6;

/**
 * Whether a step shows in the loss as it stands: a cycle that is fitted badly can make one when it is taken off, but what
 * changes at once jumps with the cycle as without. Nothing is known of what fell within a gap.
 *
 * @param time instants of the rows [ms]
 * @param loss loss of the rows, nothing taken off [dB]
 * @param hidden rows that tell nothing (1)
 * @param longest longest time between two rows that are no gap [ms]
 */
export function jumpsAsItStands(
  time: Float64Array,
  loss: Float64Array,
  hidden: Uint8Array,
  step: Step,
  longest: number,
): boolean {
  const rows = openRows(hidden, step.row, step.row);
  const border = rows.findIndex((row) => row >= step.row);
  const after = rows.length - border;
  const pause = (time[rows[border] as number] as number) - (time[rows[border - 1] as number] as number);
  if (border < lineRows || after < lineRows || pause > longest) return true;
  const values = valuesAt(loss, rows);
  const apart =
    lineAt(values.subarray(border, border + lineRows), -0.5) -
    lineAt(values.subarray(border - lineRows, border), lineRows - 0.5);
  return apart * Math.sign(step.loss) >= leastAtOnce * Math.abs(step.loss);
}

/** Pairs of neighbouring cells, gaps left out, about which two cells differ from two by `least`, more than about any beside. */
function jumps(flat: Float64Array, least: number): [number, number][] {
  const seen: number[] = [];
  for (let c = 0; c < flat.length; c++) if (!Number.isNaN(flat[c] as number)) seen.push(c);
  const of = (k: number): number => flat[seen[k] as number] as number;
  const jump = new Float64Array(seen.length);
  // The cell with the change in it may lie on either side: two about it, itself left out.
  for (let k = 2; k + 2 < seen.length; k++) jump[k] = (of(k + 1) + of(k + 2) - of(k - 1) - of(k - 2)) / 2;
  const found: [number, number][] = [];
  for (let k = 2; k + 2 < seen.length; k++) {
    const size = Math.abs(jump[k] as number);
    if (!(size >= least)) continue;
    if (
      [-2, -1, 1, 2].every((d) => Math.abs(jump[k + d] ?? 0) < size || (d > 0 && Math.abs(jump[k + d] ?? 0) === size))
    )
      found.push([seen[k - 1] as number, seen[k + 1] as number]);
  }
  return found;
}

/** Rows that are not hidden from a cell's first to another's; beyond them, so many on either side of the middle. */
function openRows(hidden: Uint8Array, from: number, to: number): Int32Array {
  const middle = (from + to) >> 1;
  let first = from;
  for (let seen = open(hidden, from, middle); seen < leastRows && first > 0; ) if (hidden[--first] === 0) seen++;
  let end = to;
  for (let seen = open(hidden, middle, to); seen < leastRows && end < hidden.length; ) if (hidden[end++] === 0) seen++;
  const rows = new Int32Array(open(hidden, first, end));
  let count = 0;
  for (let row = first; row < end; row++) if (hidden[row] === 0) rows[count++] = row;
  return rows;
}

/** How many of the rows `from` to `to` (excluded) are not hidden. */
function open(hidden: Uint8Array, from: number, to: number): number {
  let count = 0;
  for (let row = from; row < to; row++) if (hidden[row] === 0) count++;
  return count;
}

function valuesAt(column: Float64Array, rows: Int32Array): Float64Array {
  const values = new Float64Array(rows.length);
  for (let i = 0; i < rows.length; i++) values[i] = column[rows[i] as number] as number;
  return values;
}
