import { chiSquareQuantile, median, quantile } from '../statistics/index.js';
import type { View } from './view.js';

/*
 * Roughness: stretches in which single samples spread more than they usually do. Measured on short runs of rows, from
 * second differences, so that neither a change of level nor a slope counts.
 */

/** A run of rows and how its samples spread. */
export interface Run {
  readonly from: number;
  readonly to: number;
  /** Spread of the samples, share of clean air. */
  readonly spread: number;
  /** Middle of the depth, share of clean air. */
  readonly middle: number;
  /** Greatest distance from the usual level, upwards and downwards, share of clean air. */
  readonly up: number;
  readonly down: number;
  /** Whether many of its samples stand at the end of the scale, which cuts off how far they go up. */
  readonly cutOff: boolean;
}

export interface Roughness {
  readonly runs: readonly Run[];
  /** Usual spread of a run, share of clean air. */
  readonly usual: number;
  /** Spread of the calmest of one, two and three runs of one noise, as a share of that noise: the middle of many such. */
  readonly calmestShare: readonly number[];
}

/**
 * Values that count as one in a sum of squares of second differences: those of independent values overlap, and correlate by
 * -2/3 with the next and by 1/6 with the one after (variance of such a sum: Bartlett's formula, from memory).
 */
const overlapping = 1 + 2 * ((2 / 3) ** 2 + (1 / 6) ** 2);

/** Degrees of freedom of the spread of a run of so many rows. */
export const freedomOf = (rows: number): number => Math.max(1, (rows - 2) / overlapping);

/** Spread under which a share of runs of so many rows lies, as a share of their noise. */
export const spreadQuantile = (share: number, rows: number): number =>
  Math.sqrt(chiSquareQuantile(share, freedomOf(rows)) / freedomOf(rows));

/**
 * Rows in a run: enough to tell a spread, and some minutes of a fast log: a shake seen at slow sampling swings as slowly
 * as its alias.
 */
const rowsOfRun = (interval: number): number => Math.max(12, Math.min(256, Math.round(300_000 / interval)));

/** Whole runs before a row of which the calmest tells the noise: an object or a spike may spread one. Own choice. */
const runsBefore = 3;

/** Measures how rough each run of a log is. */
export function roughness(view: View, depth: Float64Array): Roughness {
  const { trace } = view;
  const runs: Omit<Run, 'cutOff'>[] = [];
  const quiet: number[] = [];
  const size = rowsOfRun(view.interval);
  for (let from = 0; from + size / 2 <= depth.length; from += size) {
    const to = Math.min(depth.length, from + size);
    const values = depth.subarray(from, to);
    const bends = Math.sqrt((bent(values) + within(trace.spread, from + 2, to)) / Math.max(1, to - from - 2));
    quiet.push(bends);
    const spread = size > 12 ? Math.max(bends, aboutLine(values)) : bends;
    runs.push({ from, to: to - 1, spread, middle: median(values), up: most(values, -1), down: most(values, 1) });
  }
  const usual =
    runs.length === 0 ? view.sampleNoise : Math.max(quantile(quiet, 0.25), view.quantum / Math.sqrt(12), 1e-5);
  const top = topOfScale(view, usual);
  const atTop = (from: number, to: number): number => trace.level.subarray(from, to).filter((v) => v >= top).length;
  return {
    runs: runs.map((r) => ({ ...r, cutOff: atTop(r.from, r.to + 1) >= leastCutOff * (r.to + 1 - r.from) })),
    usual,
    calmestShare: Array.from({ length: runsBefore }, (_, k) => spreadQuantile(1 - 0.5 ** (1 / (k + 1)), size)),
  };
}

/**
 * Share of a run's samples at the end of the scale from which it is cut off, and spreads by which that end is clear of the
 * usual level: own choice.
 */
const leastCutOff = 0.2;
const clearOfUsual = 2.5;

/** The level at which a scale ends above the usual level; beyond all levels where the usual level is its end. */
function topOfScale({ trace, quantum }: View, usual: number): number {
  const top = trace.level.reduce((a, b) => Math.max(a, b), Number.NEGATIVE_INFINITY);
  const clear = Math.max(clearOfUsual * usual, 2 * quantum);
  return top - median(trace.level) > clear ? top - quantum / 4 : Number.POSITIVE_INFINITY;
}

/**
 * Sum of squares of the samples about their course, from second differences: a slope does not count; of independent
 * values they have six times the variance. Samples that follow each other within a swing have smaller ones, so a fast
 * log is measured about its line instead.
 */
function bent(values: Float64Array): number {
  let squares = 0;
  for (let i = 2; i < values.length; i++) {
    squares += ((values[i] as number) - 2 * (values[i - 1] as number) + (values[i - 2] as number)) ** 2 / 6;
  }
  return squares;
}

/** Sum of squares within the rows `from` to `to` (excluded). */
function within(spread: Float32Array, from: number, to: number): number {
  let squares = 0;
  for (let i = from; i < to; i++) squares += (spread[i] as number) ** 2;
  return squares;
}

/** Greatest of the values, of one sign or the other; 0 where none has it. */
function most(values: Float64Array, sign: 1 | -1): number {
  let greatest = 0;
  for (let i = 0; i < values.length; i++) greatest = Math.max(greatest, sign * (values[i] as number));
  return greatest;
}

/** Standard deviation of evenly spaced values about their straight line. */
function aboutLine(values: Float64Array): number {
  const n = values.length;
  let sum = 0;
  let slope = 0;
  let squares = 0;
  for (let i = 0; i < n; i++) {
    const x = i - (n - 1) / 2;
    sum += values[i] as number;
    slope += x * (values[i] as number);
    squares += (values[i] as number) ** 2;
  }
  const spreadOfX = (n * (n * n - 1)) / 12;
  return Math.sqrt(Math.max(0, squares - (sum * sum) / n - (slope * slope) / spreadOfX) / n);
}

/**
 * Whether a run is rough by both signs alike, as far as the scale shows it: noise or shaking, not dust, which only takes
 * light.
 */
export const isTwoSided = (run: Run, usual: number): boolean =>
  run.spread > 2 * usual && (run.cutOff || (run.up > 0.4 * run.down && run.down > 0.4 * run.up));

/**
 * How much larger than usual the noise is on each row, where the samples spread more for a while.
 *
 * @param rows number of rows
 * @param sampleNoise usual spread of single samples, share of clean air: where noise fills most of a log, it is the usual
 */
export function roughFactor({ runs, usual }: Roughness, rows: number, sampleNoise: number): Float32Array {
  const factor = new Float32Array(rows).fill(1);
  const known = Math.max(usual, sampleNoise);
  runs.forEach((run, k) => {
    if (!isTwoSided(run, usual)) return;
    const f = Math.min(30, (1.3 * run.spread) / known);
    for (const near of [runs[k - 1], run, runs[k + 1]]) {
      if (near === undefined) continue;
      for (let i = near.from; i <= near.to; i++) factor[i] = Math.max(factor[i] as number, f);
    }
  });
  return factor;
}

/**
 * Noise that a growth must stand clear of: that of the samples before it, which the calmest of few runs shows too small.
 * What spreads them from its beginning on, as smoke that dithers does, is part of it.
 *
 * @param row place at which a growth begins
 * @returns spread of single samples, share of clean air; undefined where too little of the log lies before
 */
export function noiseBefore({ runs, calmestShare }: Roughness, row: number): number | undefined {
  const size = runs[0] === undefined ? 0 : runs[0].to - runs[0].from + 1;
  if (size === 0) return undefined;
  let calmest: number | undefined;
  const last = Math.min(runs.length, Math.floor(row / size));
  for (let k = Math.max(0, last - runsBefore); k < last; k++) {
    calmest = Math.min(calmest ?? Number.POSITIVE_INFINITY, (runs[k] as Run).spread);
  }
  return calmest && calmest / (calmestShare[Math.min(last, runsBefore) - 1] as number);
}

/** The run in which a row lies, and those beside it; none beyond the last. */
export function runsAbout({ runs }: Roughness, row: number): readonly Run[] {
  const [first] = runs;
  if (first === undefined) return [];
  const at = Math.floor(row / (first.to - first.from + 1));
  return runs.slice(Math.max(0, at - 1), at + 2);
}
