import { rowAt } from '../columns/index.js';
import { median, quantile, rollingMedian } from '../statistics/index.js';
import type { Climb } from './climb.js';
import { levelOf, type View } from './view.js';

/*
 * Excursions: stretches in which the level stands clearly off its slow course and daily cycle, and comes back. Each is
 * measured here once; the causes only read the measures.
 */

/** A stretch off the usual level. Depths are shares of clean air, positive for lost light (`sign` 1). */
export interface Excursion {
  /** First and last row. */
  readonly from: number;
  readonly to: number;
  /** Instants of those rows [ms]. */
  readonly start: number;
  readonly end: number;
  /** 1 where light was lost, -1 where the level stood above its usual course. */
  readonly sign: 1 | -1;
  /** Greatest depth of the smoothed course, share of clean air. */
  readonly depth: number;
  /** Upper quartile of the depth: the level of a flat bottom. */
  readonly bottom: number;
  /** Time from a sixth to four fifths of the bottom [ms]; 0 where two neighbours span it. */
  readonly onset: number;
  /** Rows that the onset takes: 1 where two neighbours span it. */
  readonly onsetRows: number;
  /** The same at the end [ms]; infinite where it never came back. */
  readonly recovery: number;
  readonly recoveryRows: number;
  /** Robust spread of the depth between onset and recovery over the bottom. */
  readonly unevenness: number;
  /** Ups and downs of the smoothed course beyond its noise over twice the depth: 1 for a single hump. */
  readonly raggedness: number;
  /** Samples deeper than half the greatest depth. */
  readonly deepSamples: number;
  /** Whether the log ends before the level came back. */
  readonly open: boolean;
}

/**
 * The depth of each row below its usual level, share of clean air.
 *
 * @param left what is left of each row's loss [dB]
 */
export function depths(view: View, left: Float64Array): Float64Array {
  const { loss } = view;
  const { level } = view.trace;
  const depth = new Float64Array(loss.length);
  for (let i = 0; i < depth.length; i++) {
    depth[i] = levelOf((loss[i] as number) - (left[i] as number)) - (level[i] as number);
  }
  return depth;
}

/** Natural log of the time that an excursion takes out over the time in, a sample added to each; 3 at most either way. */
export const slowerOut = ({ onset, recovery }: Excursion, interval: number): number =>
  Math.max(-3, Math.min(3, Math.log((Math.min(recovery, 1e9) + interval) / (Math.min(onset, 1e9) + interval))));

/** Rows over which a median takes the noise off: three at least, some three minutes at most. */
export const smoothingRows = (interval: number): number =>
  Math.min(15, Math.max(3, Math.round(180_000 / interval))) | 1;

export interface Bounds {
  /** Depth that opens an excursion, share of clean air. */
  readonly high: number;
  /** Depth at which it closes. */
  readonly low: number;
  /** Depth that opens an excursion of one or two samples. */
  readonly spike: number;
}

/** How deep an excursion must be to be told from the noise: never under 1.5 % of clean air or 1.5 steps of the scale. */
export function bounds(view: View): Bounds {
  const sigma = view.sampleNoise;
  const smoothed = (1.25 * sigma) / Math.sqrt(smoothingRows(view.interval));
  const high = Math.max(0.015, 4 * smoothed, 2.2 * view.quantum);
  return {
    high,
    low: Math.max(0.35 * high, 2.5 * smoothed),
    spike: Math.max(0.02, 6 * sigma, 2.5 * view.quantum),
  };
}

/**
 * Finds the excursions of a beam, of both signs, in order of time.
 *
 * @param view the beam's record
 * @param depth depth of each row, from `depths`
 * @param raised factor on the bounds of each row, where the noise is larger for a while; none: 1 everywhere
 */
export function findExcursions(view: View, depth: Float64Array, raised?: Float32Array): Excursion[] {
  const limits = bounds(view);
  const smooth = rollingMedian(depth, smoothingRows(view.interval));
  const found: Excursion[] = [];
  for (const sign of [1, -1] as const) {
    const runs = runsOf(smooth, depth, sign, limits, raised);
    for (const { from, to } of runs) found.push(measure(view, depth, smooth, from, to, sign));
  }
  return found.sort((a, b) => a.start - b.start || a.sign - b.sign);
}

/** How often the bound that opens an excursion an event is deep that stands clear of it. */
const clearly = 1.5;

/** Rows, first and last, of what stands off the usual level clearly: one excursion each, of both signs. */
export function clearEvents(view: View, depth: Float64Array): { from: number; to: number }[] {
  const limits = bounds(view);
  const rows = smoothingRows(view.interval);
  const smooth = rollingMedian(depth, rows);
  return ([1, -1] as const).flatMap((sign) =>
    runsOf(smooth, depth, sign, limits).filter(
      ({ from, to }) => greatestDepth(depth, smooth, from, to, sign, 2 * rows) >= clearly * limits.high,
    ),
  );
}

/** Greatest depth of rows `from` to `to` on the smooth course; of few rows, and where that shows none, on their own. */
function greatestDepth(
  depth: Float64Array,
  smooth: Float64Array,
  from: number,
  to: number,
  sign: 1 | -1,
  few: number,
): number {
  const greatest = most(to - from + 1 < few ? depth : smooth, from, to, sign);
  return greatest > 0 ? greatest : most(depth, from, to, sign);
}

/** Greatest of values of one sign, places `from` to `to`; 0 where none has it. */
function most(values: Float64Array, from: number, to: number, sign: 1 | -1): number {
  let greatest = 0;
  for (let i = from; i <= to; i++) {
    const value = sign * (values[i] as number);
    if (value > greatest) greatest = value;
  }
  return greatest;
}

/** Longest that a climb which passed no bound is followed [ms]: what stays longer is a new level. */
const mostHeld = 6 * 3_600_000;
/** Longest to the end of the log [ms] for which what has not cleared may still be smoke in the hall: own choice. */
const mayStillBe = 24 * 3_600_000;

/** Rows up to the begin of a climb whose middle is the level before it. Own choice. */
const rowsBefore = 5;

/**
 * The excursion about a climb that passed no bound: the stretch in which the loss stays above a third of its rise,
 * measured from the level before the climb.
 */
export function excursionAbout(view: View, { from, to: top }: Climb): Excursion {
  const { time, level } = view.trace;
  const reach = (time[top] as number) + Math.max(mostHeld, 10 * ((time[top] as number) - (time[from] as number)));
  const latest = view.to - (time[top] as number) <= mayStillBe ? Math.max(reach, view.to) : reach;
  const margin = 4 * smoothingRows(view.interval);
  const first = Math.max(0, from - margin);
  const last = Math.min(level.length, rowAt(time, latest) + margin);
  // Not the top less the rise: of what dithers, one sample may stand far above the climb's smoothed course.
  const before = levelOf(median(view.loss.subarray(Math.max(0, from + 1 - rowsBefore), from + 1)));
  const own = new Float64Array(last - first);
  for (let i = first; i < last; i++) own[i - first] = before - (level[i] as number);
  const half = smoothingRows(view.interval) >> 1;
  // Hours may be allowed, and minutes are the rule: the median goes on as far as it is asked for.
  let smooth: Float64Array = new Float64Array(0);
  const deep = (i: number): number => {
    if (i - first >= smooth.length) {
      const wanted = Math.min(own.length, 2 * (i - first) + 64);
      const rows = rollingMedian(own.subarray(0, wanted + half), 2 * half + 1);
      smooth = rows.subarray(0, wanted);
    }
    return Math.max(smooth[i - first] as number, own[i - first] as number);
  };
  const least = deep(top) / 3;
  let to = top;
  while (to + 1 < last && (time[to + 1] as number) <= latest && deep(to + 1) > least) to++;
  let start = top;
  while (start > from && deep(start - 1) > least / 3) start--;
  return measure(view, own, smooth, start, to, 1, first);
}

/** Runs of rows beyond the low bound that somewhere pass the high one, and lone spikes. */
function runsOf(
  smooth: Float64Array,
  depth: Float64Array,
  sign: 1 | -1,
  limits: Bounds,
  raised?: Float32Array,
): { from: number; to: number }[] {
  const { high, low, spike } = limits;
  const n = depth.length;
  const runs: { from: number; to: number }[] = [];
  const next = (row: number): number => nextOff(row, smooth, depth, sign, limits, raised);
  for (let i = next(0); i < n; i = next(i)) {
    const from = i;
    let passed = false;
    let last = i;
    for (; i < n && i - last <= 1; i++) {
      const f = raised === undefined ? 1 : (raised[i] as number);
      const si = sign * (smooth[i] as number);
      const di = sign * (depth[i] as number);
      if (si > high * f || di > spike * f) passed = true;
      if (si > low * f || di > spike * f) last = i;
    }
    i = last + 1;
    if (!passed) continue;
    const run = tighten(depth, sign, from, last, low);
    const before = runs.at(-1);
    if (sign * (depth[run.from] as number) <= low) continue;
    if (before !== undefined && run.from <= before.to + 1)
      runs[runs.length - 1] = { from: before.from, to: Math.max(before.to, run.to) };
    else runs.push(run);
  }
  return runs;
}

/** First row from `row` on beyond the low bound; the number of rows where there is none. */
function nextOff(
  row: number,
  smooth: Float64Array,
  depth: Float64Array,
  sign: 1 | -1,
  { low, spike }: Bounds,
  raised: Float32Array | undefined,
): number {
  let i = row;
  for (; i < depth.length; i++) {
    const factor = raised === undefined ? 1 : (raised[i] as number);
    if (sign * (smooth[i] as number) > low * factor || sign * (depth[i] as number) > spike * factor) break;
  }
  return i;
}

/** Moves the ends of a run to the samples that are themselves off: a median reaches further than the event. */
function tighten(
  depth: Float64Array,
  sign: 1 | -1,
  from: number,
  to: number,
  low: number,
): { from: number; to: number } {
  let a = from;
  let b = to;
  while (a < b && sign * (depth[a] as number) <= low) a++;
  while (b > a && sign * (depth[b] as number) <= low) b--;
  while (a > 0 && sign * (depth[a - 1] as number) > low) a--;
  while (b < depth.length - 1 && sign * (depth[b + 1] as number) > low) b++;
  return { from: a, to: b };
}

function measure(
  view: View,
  depth: Float64Array,
  smooth: Float64Array,
  from: number,
  to: number,
  sign: 1 | -1,
  first = 0,
): Excursion {
  const { time, until, count } = view.trace;
  const rows = to - from + 1;
  const own = new Float64Array(rows);
  for (let i = 0; i < rows; i++) own[i] = sign * (depth[from + i - first] as number);
  const few = 2 * smoothingRows(view.interval);
  const greatest = greatestDepth(depth, smooth, from - first, to - first, sign, few);
  const bottom = Math.max(quantile(own, 0.75), 0.5 * greatest);
  const swings =
    upsAndDowns(rows < few ? depth : smooth, from - first, to - first, sign) - rows * noiseStep(view, rows < few);
  let deep = 0;
  for (let i = 0; i < rows; i++) if ((own[i] as number) > greatest / 2) deep += count[from + i] as number;
  const edgeIn = edge(view, depth, sign, from, to, bottom, 1, first);
  const edgeOut = edge(view, depth, sign, from, to, bottom, -1, first);
  const inner = depth.slice(
    Math.min(edgeIn.deep, edgeOut.deep) - first,
    Math.max(edgeIn.deep, edgeOut.deep) + 1 - first,
  );
  const middle = median(inner);
  const away = inner.map((v) => Math.abs(v - middle));
  return {
    from,
    to,
    start: time[from] as number,
    end: until[to] as number,
    sign,
    depth: greatest,
    bottom,
    onset: edgeIn.time,
    onsetRows: edgeIn.rows,
    recovery: edgeOut.time,
    recoveryRows: edgeOut.rows,
    unevenness: inner.length < 3 ? 0 : quantile(away, 0.9) / Math.max(bottom, 1e-6),
    raggedness: greatest > 0 ? Math.max(1, swings / (2 * greatest)) : 0,
    deepSamples: deep,
    open: to === time.length - 1,
  };
}

/**
 * How far noise moves the course from row to row: of independent samples two differ by 2 / sqrt(pi) spreads on average, two
 * neighbouring means of n by an nth of that. Hours of a fast log would be ragged for their noise alone.
 */
const noiseStep = ({ sampleNoise, interval }: View, single: boolean): number =>
  ((2 / Math.sqrt(Math.PI)) * sampleNoise) / (single ? 1 : smoothingRows(interval));

/** Ups and downs of values of one sign, places `from` to `to`, from 0 and back to it. */
function upsAndDowns(values: Float64Array, from: number, to: number, sign: 1 | -1): number {
  let swings = 0;
  for (let i = from + 1; i <= to; i++) swings += Math.abs((values[i] as number) - (values[i - 1] as number));
  return swings + (Math.max(0, sign * (values[from] as number)) + Math.max(0, sign * (values[to] as number)));
}

/** How an excursion begins (`way` 1) or ends (-1): rows and time between a sixth and four fifths of the bottom. */
function edge(
  view: View,
  depth: Float64Array,
  sign: 1 | -1,
  from: number,
  to: number,
  bottom: number,
  way: 1 | -1,
  first: number,
): { deep: number; rows: number; time: number } {
  const { time, until } = view.trace;
  const at = (row: number): number => sign * (depth[row - first] as number);
  let deep = way === 1 ? from : to;
  const stop = way === 1 ? to : from;
  while (deep !== stop && at(deep) < 0.8 * bottom) deep += way;
  let shallow = deep;
  while (shallow - way >= first && shallow - way < first + depth.length && at(shallow) > bottom / 6) shallow -= way;
  if (at(shallow) > bottom / 6) return { deep, rows: Infinity, time: Infinity };
  const gap =
    way === 1
      ? (time[deep] as number) - (until[shallow] as number)
      : (time[shallow] as number) - (until[deep] as number);
  return { deep, rows: Math.abs(deep - shallow), time: gap };
}
