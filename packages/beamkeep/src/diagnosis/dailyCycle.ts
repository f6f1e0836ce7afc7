import { day } from '../columns/index.js';
import { normalOverMad } from '../numbers/index.js';
import { median, medianAbsoluteDeviation } from '../statistics/index.js';
import type { Cells } from './cells.js';

/*
 * The daily cycle of a beam, from a table of days against time of day. Heat moves a building more on a clear day than
 * on a dull one, so each day has its own amplitude on a shape that the days share; a second shape takes up what the
 * lobe bends (movement squared). Fitted by alternating least squares with biweight weights: an event of some hours
 * on some days does not pull it.
 *
 *     loss(day, time of day) = amplitude1(day) * shape1(time of day) + amplitude2(day) * shape2(time of day)
 */

/** Tuning constant of the biweight: 95 % efficiency for normal errors (Beaton and Tukey 1974, from memory). */
const bound = 4.685;
const rounds = 8;
/** How often the days of one hour, or the hours of one day, are weighed anew. */
const weighings = 3;
/** A shared shape can be told from the weather of single days only where there are some. */
const leastDays = 4;

export interface DailyCycle {
  /** The cycle's part of each cell's loss [dB], about its own middle. */
  readonly loss: Float64Array;
  /** Whether there were days enough to fit one. */
  readonly fitted: boolean;
}

/**
 * Fits the daily cycle.
 *
 * @param cells the cells' grid: a whole number of them to the day
 * @param loss what is left of each cell's loss when its slow course is taken off [dB]; NaN is missing
 * @param noise spread of a cell's median [dB]
 */
export function dailyCycle(cells: Cells, loss: Float64Array, noise: number): DailyCycle {
  const perDay = Math.round(day / cells.width);
  const days = Math.ceil(cells.length / perDay);
  const fit = new Float64Array(cells.length);
  if (days < leastDays || Math.abs(perDay * cells.width - day) > 1) return { loss: fit, fitted: false };
  const left = Float64Array.from(loss);
  for (let component = 0; component < 2; component++) {
    const { shape, amplitude } = component1(left, days, perDay, noise);
    for (let c = 0; c < cells.length; c++) {
      const part = amplitudeAt(amplitude, c, perDay) * (shape[c % perDay] as number);
      fit[c] = (fit[c] as number) + part;
      left[c] = (left[c] as number) - part;
    }
  }
  return { loss: fit, fitted: true };
}

/** Share of the day about midnight in which one day's amplitude passes into the next: the building does not jump. Own choice. */
const passing = 1 / 4;

function amplitudeAt(amplitude: Float64Array, cell: number, perDay: number): number {
  const day = Math.floor(cell / perDay);
  const own = amplitude[day] as number;
  // From -1/2 at the day's begin to 1/2 at its end.
  const place = ((cell % perDay) + 0.5) / perDay - 0.5;
  const beyond = Math.abs(place) - (0.5 - passing / 2);
  const other = beyond > 0 ? amplitude[day + Math.sign(place)] : undefined;
  return other === undefined ? own : own + ((other - own) * beyond) / passing;
}

function component1(x: Float64Array, days: number, perDay: number, noise: number) {
  const table = tableOf(x, days, perDay);
  const amplitude = new Float64Array(days).fill(1);
  let shape: Float64Array = new Float64Array(perDay);
  const offHour = new Float64Array(days);
  const offDay = new Float64Array(perDay);
  for (let h = 0; h < perDay; h++) {
    const m = median(table.hours[h] as Float64Array);
    shape[h] = Number.isNaN(m) ? 0 : m;
  }
  // When the days disagree in sign or hardly share a shape, the liveliest day begins instead.
  if (norm(shape) < noise * Math.sqrt(perDay) * 0.3) shape = liveliest(table.days, noise) ?? new Float64Array(perDay);
  for (let round = 0; round < rounds; round++) {
    normalise(shape);
    for (let d = 0; d < days; d++) amplitude[d] = scaleOf(table.days[d] as Float64Array, shape, noise, offDay);
    for (let h = 0; h < perDay; h++) shape[h] = scaleOf(table.hours[h] as Float64Array, amplitude, noise, offHour);
    shape = smooth(shape);
  }
  return { shape, amplitude: shared(amplitude) };
}

/** Days against time of day: the cells of each day, and those of each time of day. */
interface DayTable {
  readonly days: readonly Float64Array[];
  readonly hours: readonly Float64Array[];
}

/** The table of a series of cells; NaN where the last day has no more of them. */
function tableOf(x: Float64Array, days: number, perDay: number): DayTable {
  const byDay = new Float64Array(days * perDay).fill(Number.NaN);
  byDay.set(x);
  const byHour = new Float64Array(days * perDay);
  for (let d = 0; d < days; d++)
    for (let h = 0; h < perDay; h++) byHour[h * days + d] = byDay[d * perDay + h] as number;
  const lines = (table: Float64Array, length: number): Float64Array[] =>
    Array.from({ length: table.length / length }, (_, k) => table.subarray(k * length, (k + 1) * length));
  return { days: lines(byDay, perDay), hours: lines(byHour, days) };
}

/** The day that swings most, what is missing taken for 0; nothing where none swings. */
function liveliest(days: readonly Float64Array[], noise: number): Float64Array | undefined {
  let best: Float64Array | undefined;
  let most = 0;
  for (const day of days) {
    let size = 0;
    for (let h = 0; h < day.length; h++) {
      const off = Math.abs(day[h] as number);
      if (!Number.isNaN(off)) size += Math.min(off, 20 * noise);
    }
    if (size > most) {
      most = size;
      best = day;
    }
  }
  return best?.map((v) => (Number.isNaN(v) ? 0 : v));
}

/** Days that must share a shape, and how far a day may pass them; the weather of a few days tells less of the next. */
const sharing = 3;
const beyond = 1.5;
const beyondFew = 2;
const fewDays = 7;

/** What a single day does is no cycle: its amplitude is held to what the third largest allows (of few days, the second). */
function shared(amplitude: Float64Array): Float64Array {
  const sizes = amplitude.map(Math.abs).sort();
  const reach = sizes.length < fewDays ? beyondFew : beyond;
  const most = reach * (sizes[sizes.length - Math.min(sharing, Math.ceil(sizes.length / 3))] ?? 0);
  return amplitude.map((a) => Math.sign(a) * Math.min(Math.abs(a), most));
}

/** The factor that brings a pattern nearest to values, by biweight least squares; `residual` is room for as many. */
function scaleOf(values: Float64Array, pattern: Float64Array, noise: number, residual: Float64Array): number {
  const n = values.length;
  residual.fill(0);
  let factor = 0;
  let reach = Number.POSITIVE_INFINITY;
  for (let round = 0; ; round++) {
    let top = 0;
    let bottom = 0;
    for (let i = 0; i < n; i++) {
      const v = values[i] as number;
      const p = pattern[i] as number;
      if (Number.isNaN(v)) continue;
      const u = (residual[i] as number) / reach;
      const w = round === 0 ? 1 : Math.abs(u) < 1 ? (1 - u * u) ** 2 : 0;
      top += w * v * p;
      bottom += w * p * p;
    }
    factor = bottom > 0 ? top / bottom : 0;
    if (round === weighings) return factor;
    for (let i = 0; i < n; i++) residual[i] = (values[i] as number) - factor * (pattern[i] as number);
    reach = bound * spreadOf(residual, noise);
  }
}

/** Robust spread of values about 0, `least` at least: where more than half lie within that, it is not worked out. */
function spreadOf(values: Float64Array, least: number): number {
  let within = 0;
  for (let i = 0; i < values.length; i++) {
    if (normalOverMad.value * Math.abs(values[i] as number) <= least) within++;
  }
  return 2 * within > values.length ? least : Math.max(least, medianAbsoluteDeviation(values, 0) || 0);
}

function norm(v: Float64Array): number {
  let sum = 0;
  for (const x of v) sum += x * x;
  return Math.sqrt(sum);
}

function normalise(v: Float64Array): void {
  const length = norm(v);
  if (length > 0) for (let i = 0; i < v.length; i++) v[i] = (v[i] as number) / length;
}

/** Round the clock, a quarter from each neighbour: heat moves no building within one hour. */
function smooth(v: Float64Array): Float64Array {
  const n = v.length;
  return Float64Array.from(
    v,
    (x, i) => 0.5 * x + 0.25 * (v[(i + n - 1) % n] as number) + 0.25 * (v[(i + 1) % n] as number),
  );
}
