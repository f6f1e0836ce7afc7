import { type Channel, day, rowAt } from '../columns/index.js';
import { median, medianAbsoluteDeviation, quantile, robustLeastSquares } from '../statistics/index.js';
import { middle } from './cells.js';
import { growthOf } from './growth.js';
import type { Picture } from './picture.js';
import { cellOfStep, type Step } from './steps.js';
import { levelOf } from './view.js';

/*
 * Slow loss: what the level loses over days between one restoration and the next, in decibels, with the daily cycle
 * and the events taken off. Steps down inside a stretch (a knock) are taken out: their loss is not dirt.
 */

/** One stretch between restorations. */
export interface SlowStretch {
  /** Instants of its first and last sample [ms]. */
  readonly start: number;
  readonly end: number;
  /** Middles of its days [ms], and what the slow course had lost by then, steps inside taken out [dB]. */
  readonly time: Float64Array;
  readonly loss: Float64Array;
  /** Loss gained from its begin to its end [dB], and as a share of clean air. */
  readonly gained: number;
  readonly gainedShare: number;
  /** Spread of a day about the smooth course [dB]. */
  readonly noise: number;
  /** Whether the sway was measured by the kelvin of the structure's temperature. */
  readonly swayByHeat: boolean;
  /** Share of pairs of days that rise less share that falls: 1 for steady growth. */
  readonly steadiness: number;
  /** Slope of the last third over that of the first third; NaN where it is too short to tell. */
  readonly acceleration: number;
  /** How much the record speaks for a growth that speeds up (positive) against a steady one (negative). */
  readonly speedsUp: number;
  /** Growth of the daily sway in dB from the first to the last third: 1 unchanged; NaN without sway. */
  readonly swayGrowth: number;
  /** Spearman-like agreement between sway and the root of loss; NaN without sway. */
  readonly swayFollows: number;
  /** Whether the stretch ends in a step up. */
  readonly restored: boolean;
  /** Loss taken off by the step at its end [dB]; 0 without. */
  readonly restoredBy: number;
}

/** The stretches of a beam between its restorations (steps up). */
export function slowStretches(picture: Picture): SlowStretch[] {
  const { parts, view } = picture;
  const ups = parts.steps.filter((s) => s.loss < 0);
  const borders: (Step | undefined)[] = [undefined, ...ups, undefined];
  const stretches: SlowStretch[] = [];
  for (let k = 0; k + 1 < borders.length; k++) {
    const one = measure(picture, borders[k], borders[k + 1]);
    if (one !== undefined) stretches.push(one);
  }
  return stretches.length > 0 || view.to <= view.from ? stretches : [];
}

/** No season. */
const none = new Float64Array(0);

function measure(picture: Picture, from: Step | undefined, to: Step | undefined): SlowStretch | undefined {
  const { parts, view } = picture;
  const { cells, course, cycle } = parts;
  const season = picture.heat?.season ?? none;
  const { time, until } = view.trace;
  const first = from === undefined ? 0 : cellOfStep(cells, time, from) + 1;
  const last = to === undefined ? cells.length : cellOfStep(cells, time, to);
  const perDay = Math.max(1, Math.round(day / cells.width));
  const times: number[] = [];
  const losses: number[] = [];
  const sways: number[] = [];
  // Whole days where there are some; a short stretch in eight pieces.
  const piece = Math.max(1, Math.min(perDay, Math.floor((last - first) / 8)));
  for (let c = first; c + piece / 2 <= last; c += piece) {
    const values = new Float64Array(Math.min(piece, last - c));
    let high = Number.NEGATIVE_INFINITY;
    let low = Number.POSITIVE_INFINITY;
    for (let i = 0; i < values.length; i++) {
      values[i] = (course[c + i] as number) - (cycle[c + i] as number) - (season[c + i] ?? 0);
      high = Math.max(high, cycle[c + i] as number);
      low = Math.min(low, cycle[c + i] as number);
    }
    const middleLoss = median(values);
    if (Number.isNaN(middleLoss)) continue;
    const at = middle(cells, c + (values.length - 1) / 2);
    times.push(at);
    losses.push(middleLoss);
    sways.push(high - low);
  }
  if (times.length < 4) return undefined;
  const x = Float64Array.from(times);
  const inside = parts.steps
    .filter((s) => s.loss > 0 && (from === undefined || s.row > from.row) && (to === undefined || s.row < to.row))
    .map((s) => time[s.row] as number);
  const y = withoutDrops(x, Float64Array.from(losses), inside, parts.cellNoise);
  const n = y.length;
  const third = Math.max(1, Math.floor(n / 3));
  const bends: number[] = [];
  for (let i = 1; i < n; i++) bends.push((y[i] as number) - (y[i - 1] as number));
  const drift = median(bends);
  const noise = Math.max(medianAbsoluteDeviation(bends, drift) / Math.SQRT2, parts.cellNoise / 4);
  const scaled = x.map((t) => (t - (x[0] as number)) / day);
  const growth = growthOf(scaled, y, noise);
  // A loss that begins late is told from where it begins.
  const late0 = growth.explained > 0.6 && growth.from > 0.1 * n && n - growth.from >= 5 ? growth.from : 0;
  const part = y.subarray(late0);
  const [begin, finish] = ends(part);
  const gained = finish - begin;
  const opening = from === undefined ? view.from : (time[from.row] as number);
  const start =
    late0 === 0 ? opening : (time[rowAt(time, (x[late0] as number) - (piece * cells.width) / 2)] ?? opening);
  const end = to === undefined ? view.to : (until[Math.max(0, to.row - 1)] as number);
  const early = slope(x.subarray(0, third), y.subarray(0, third));
  const late = slope(x.subarray(n - third), y.subarray(n - third));
  const whole = slope(x, y);
  // A hotter day sways more whatever the aim: where the temperature is known, the sway is told by the kelvin.
  const warmth = dailyRanges(view.record.temperature, x, piece * cells.width);
  const sway = Float64Array.from(sways, (s, i) => (warmth === undefined ? s : s / Math.max(warmth[i] as number, 1)));
  const swayed = quantile(sways, 0.7) > 4 * parts.cellNoise && n >= 9;
  // A level above clean air has more to lose than there is clean air; no more than all of it is told.
  const base = Math.min(1, levelOf(begin));
  return {
    start,
    end,
    time: x,
    loss: y,
    gained,
    gainedShare: base * (1 - levelOf(gained)),
    noise,
    steadiness: steadiness(part),
    acceleration: n >= 9 && whole > 0 ? (late - early) / whole : Number.NaN,
    speedsUp: n >= 9 ? growth.speedsUp : 0,
    swayGrowth: swayed
      ? quantile(sway.subarray(n - third), 0.7) /
        Math.max(
          quantile(sway.subarray(0, third), 0.7),
          (2 * parts.cellNoise * median(sway)) / Math.max(median(sways), 1e-9),
        )
      : Number.NaN,
    swayFollows: swayed ? agreement(y, sway) : Number.NaN,
    swayByHeat: warmth !== undefined,
    restored: to !== undefined,
    restoredBy: to === undefined ? 0 : -to.loss,
  };
}

/** The course with the steps down inside it taken out: their sizes are fitted together with a common slope. */
function withoutDrops(x: Float64Array, y: Float64Array, at: readonly number[], noise: number): Float64Array {
  const drops = at.filter((t) => x.some((v) => v < t) && x.some((v) => v > t));
  if (drops.length === 0 || x.length < drops.length + 4) return y;
  const first = x[0] as number;
  const columns = [
    new Float64Array(x.length).fill(1),
    x.map((t) => (t - first) / day),
    ...drops.map((t) => x.map((v) => (v >= t ? 1 : 0))),
  ];
  const { coefficients } = robustLeastSquares(columns, y, { leastSpread: noise / 2 });
  return y.map(
    (v, i) => v - drops.reduce((sum, t, k) => sum + ((x[i] as number) >= t ? (coefficients[k + 2] ?? 0) : 0), 0),
  );
}

/** Loss at the begin and the end of a series: lines through its first and last parts, read at their outer ends. */
function ends(y: Float64Array): [number, number] {
  const n = y.length;
  const k = Math.max(2, Math.min(10, Math.floor(n / 4)));
  const head = y.subarray(0, k);
  const tail = y.subarray(n - k);
  const pace = (median(tail) - median(head)) / Math.max(1, n - k);
  return [median(head) - (pace * (k - 1)) / 2, median(tail) + (pace * (k - 1)) / 2];
}

/** Slope through the medians of the two halves. */
function slope(x: Float64Array, y: Float64Array): number {
  const half = Math.floor(x.length / 2);
  if (half < 1) return 0;
  const dx = median(x.subarray(x.length - half)) - median(x.subarray(0, half));
  return (median(y.subarray(y.length - half)) - median(y.subarray(0, half))) / dx;
}

/** Kendall's rank agreement with time, on at most 120 points. */
function steadiness(y: Float64Array): number {
  const stride = Math.max(1, Math.ceil(y.length / 120));
  let up = 0;
  let pairs = 0;
  for (let i = 0; i < y.length; i += stride) {
    for (let j = i + stride; j < y.length; j += stride) {
      up += Math.sign((y[j] as number) - (y[i] as number));
      pairs++;
    }
  }
  return pairs === 0 ? 0 : up / pairs;
}

/** Kendall's rank agreement of two series, on at most 120 points. */
function agreement(a: Float64Array, b: Float64Array): number {
  const stride = Math.max(1, Math.ceil(a.length / 120));
  let same = 0;
  let pairs = 0;
  for (let i = 0; i < a.length; i += stride) {
    for (let j = i + stride; j < a.length; j += stride) {
      same += Math.sign(((a[j] as number) - (a[i] as number)) * ((b[j] as number) - (b[i] as number)));
      pairs++;
    }
  }
  return pairs === 0 ? 0 : same / pairs;
}

/** Range of a channel about each instant, over a span as long as given; nothing without a channel. */
function dailyRanges(channel: Channel | undefined, at: Float64Array, span: number): Float64Array | undefined {
  if (channel === undefined || channel.time.length < at.length) return undefined;
  return at.map((t) => {
    const from = rowAt(channel.time, t - span / 2);
    const to = rowAt(channel.time, t + span / 2);
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    for (let i = from; i < to; i++) {
      low = Math.min(low, channel.value[i] as number);
      high = Math.max(high, channel.value[i] as number);
    }
    return high > low ? high - low : Number.NaN;
  });
}
