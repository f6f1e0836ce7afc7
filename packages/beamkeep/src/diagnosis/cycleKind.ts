import { day, hour } from '../columns/index.js';
import { median, quantile, rollingMedian } from '../statistics/index.js';
import { middle } from './cells.js';
import { solarHour } from './families.js';
import type { CellParts } from './takeApart.js';
import { levelOf, tenLog, type View } from './view.js';

/*
 * What repeats with the day need not be movement: mist comes most nights in a wet month, and its dips would pass for a
 * daily cycle. Mist leaves the level flat for the rest of the day and dips about the coldest hours; movement bends the
 * whole day. What is no movement must stay out of the cycle, or it would be taken off and never seen.
 */

export interface DailyShape {
  /** Days that swing enough to be judged. */
  readonly days: number;
  /** Their share of the days of the record. */
  readonly often: number;
  /** Share of the day within a fifth of the swing from the clear level: median over those days. */
  readonly flatShare: number;
  /** Hours a day deeper than six tenths of the swing: median. */
  readonly darkHours: number;
  /** Solar time of the middle of those hours [h], and how closely the days agree (0 to 1). */
  readonly darkAt: number;
  readonly agreement: number;
  /** Ups and downs of a day's course over twice its swing: 1 for one smooth hump; median. */
  readonly raggedness: number;
  /** The same with the noise of single cells taken out, by a median of three; NaN where no day then swings enough. */
  readonly smoothRaggedness: number;
  /**
   * Steepest change over two cells as a share of the swing, up or down, whichever is less: 1 where it is switched; median.
   * NaN where cells are too wide, or days too few that pass a step of the scale by far.
   */
  readonly switched: number;
  /** Loss at the clear level of those days [dB], median: below 0 where light is added to that of clean air. */
  readonly clearLoss: number;
}

/** Measures the shape of a beam's days. */
export function dailyShape(view: View, parts: CellParts, least: number): DailyShape {
  const { cells, course, slow } = parts;
  const perDay = Math.round(day / cells.width);
  const flat: number[] = [];
  const dark: number[] = [];
  const rag: number[] = [];
  const smoothRag: number[] = [];
  const sudden: number[] = [];
  const clearest: number[] = [];
  const step = (tenLog * view.quantum) / (levelOf(median(slow)) || 1);
  let east = 0;
  let north = 0;
  let judged = 0;
  let all = 0;
  for (let from = 0; from + perDay <= cells.length; from += perDay) {
    const x = new Float64Array(perDay);
    for (let h = 0; h < perDay; h++) x[h] = (course[from + h] as number) - (slow[from + h] as number);
    const clear = quantile(x, 0.1);
    if (!Number.isNaN(clear)) all++;
    const swing = quantile(x, 0.97) - clear;
    if (!(swing > Math.max(least, 5 * parts.cellNoise))) continue;
    judged++;
    clearest.push(quantile(course.subarray(from, from + perDay), 0.1));
    rag.push(ups(x) / (2 * swing));
    // Of two steps of a coarse scale, what moves slowly takes one at a time: of one step nothing is known.
    if (swing > 1.5 * step) sudden.push(Math.min(steepest(x, 1), steepest(x, -1)) / swing);
    const smooth = rollingMedian(x, 3);
    smoothRag.push(ups(smooth) / (2 * (quantile(smooth, 0.97) - quantile(smooth, 0.1))));
    let level = 0;
    let present = 0;
    let deep = 0;
    for (let h = 0; h < perDay; h++) {
      const d = (x[h] as number) - clear;
      if (Number.isNaN(d)) continue;
      present++;
      if (d < Math.max(0.2 * swing, 2 * parts.cellNoise)) level++;
      if (d > 0.6 * swing) {
        deep++;
        const angle = (solarHour(view, middle(cells, from + h)) / 24) * 2 * Math.PI;
        east += Math.cos(angle) / perDay;
        north += Math.sin(angle) / perDay;
      }
    }
    flat.push(level / Math.max(1, present));
    dark.push((deep * 24) / perDay);
  }
  const total = dark.reduce((a, b) => a + b, 0) / 24;
  return {
    days: judged,
    often: judged / all,
    flatShare: median(flat),
    darkHours: median(dark),
    darkAt: ((Math.atan2(north, east) / (2 * Math.PI)) * 24 + 24) % 24,
    agreement: total > 0 ? Math.hypot(east, north) / total : 0,
    raggedness: median(rag),
    smoothRaggedness: median(smoothRag),
    clearLoss: median(clearest),
    switched: cells.width > widest || sudden.length < leastSudden ? Number.NaN : median(sudden),
  };
}

/** Sum of all changes from cell to cell, missing ones left out. */
function ups(x: Float64Array): number {
  let sum = 0;
  let last = Number.NaN;
  for (const v of x) {
    if (Number.isNaN(v)) continue;
    if (!Number.isNaN(last)) sum += Math.abs(v - last);
    last = v;
  }
  return sum;
}

/** Widest cell that shows what is switched [ms], and fewest days that do. Own choice. */
const widest = 1.5 * hour;
const leastSudden = 3;

/** Greatest change over two cells, towards a sign: a change at once that falls within a cell shows in full over two. */
function steepest(x: Float64Array, sign: 1 | -1): number {
  let most = 0;
  for (let h = 2; h < x.length; h++) {
    const change = sign * ((x[h] as number) - (x[h - 2] as number));
    if (change > most) most = change;
  }
  return most;
}

/** Share of the day that movement leaves flat at most, and how ragged its course may be. */
const flattest = 0.53;
const raggedest = 2.5;
/** By day, one smooth hump may be shorter: the sun on a roof for some hours. Own choice. */
const flattestByDay = 0.83;
const smoothByDay = 1.4;
/** Noise of single cells makes a smooth hump ragged: a broad one by day is known with the noise taken out. Own choice. */
const flattestBroad = 0.6;
const broadHours = 5;
const smoothBroad = 1.25;
/** Mist stays away on some nights, and work on some days: what bends nearly every day smoothly is the building. Own choice. */
const nearlyAlways = 0.88;
const leastDays = 7;
const flattestAlways = 0.65;
const smoothAlways = 1.15;

/**
 * Share of the day's swing that comes and goes within two cells: a building lags behind heat, light is switched. Hours of
 * the day that light leaves dark, so that the middle of the day stays as it is: dips at once are no light. How ragged a day
 * may be that is lit once, with the noise taken out and with it. And loss under which light was added to that of clean air
 * [dB], which no aim does. Own choice.
 */
const switchedAtOnce = 0.82;
const leastDark = 14;
const litOnce = { smooth: 1.35, noisy: 2 };
const added = -0.043;

/** Whether light is switched on for some hours of the day. */
const isLit = ({ switched, darkHours, smoothRaggedness, raggedness, clearLoss }: DailyShape): boolean =>
  switched > switchedAtOnce &&
  darkHours >= leastDark &&
  smoothRaggedness < litOnce.smooth &&
  raggedness < litOnce.noisy &&
  clearLoss < added;

/**
 * Whether the daily repetition may be taken for movement, so far as its shape tells: mist dips in the coldest hours and
 * leaves the rest flat, sun lasts an hour or two, dust is ragged.
 */
export function mayBeMovement(shape: DailyShape): boolean {
  if (shape.days < 3) return true;
  if (isLit(shape)) return false;
  const byDay = shape.darkAt > 9.5 && shape.darkAt < 20;
  if (shape.raggedness < smoothByDay && byDay && shape.darkHours >= 3) {
    return shape.flatShare < flattestByDay;
  }
  if (byDay && shape.darkHours >= broadHours && shape.smoothRaggedness < smoothBroad) {
    return shape.flatShare < flattestBroad;
  }
  if (shape.often >= nearlyAlways && shape.days >= leastDays && shape.smoothRaggedness < smoothAlways) {
    return shape.flatShare < flattestAlways;
  }
  return shape.flatShare < flattest && shape.darkHours >= 3.5 && shape.raggedness < raggedest;
}
