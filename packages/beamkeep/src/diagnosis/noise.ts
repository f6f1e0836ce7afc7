import type { Trace } from '../columns/index.js';
import { median, quantile } from '../statistics/index.js';

/** 0.6745: the median absolute deviation of a normal distribution in standard deviations. */
const madOfNormal = 0.6744897501960817;
/** Differences are taken over the whole log, but not of more pairs than this: a spread needs no more. */
const mostPairs = 200_000;

/**
 * Spread of single samples about the level that they share [share of clean air], from differences of neighbours, so
 * that slow change does not count; never under what the scale's step alone makes.
 *
 * @param trace the log
 * @param quantum smallest step of the scale, share of clean air
 */
export function sampleNoise(trace: Trace, quantum: number): number {
  const { level, spread, count } = trace;
  const n = level.length;
  const stride = Math.max(1, Math.floor(n / mostPairs));
  const steps = stepsOf(level, count, stride);
  const within = spreadsOf(spread, count, stride);
  // A coarse scale holds most neighbours equal: their median says 0, so the mean of the calmer part stands in.
  const calm = steps.length > 0 ? quantile(steps, 0.9) : 0;
  const fromSteps =
    steps.length === 0
      ? Number.NaN
      : Math.max(median(steps) / madOfNormal, rootMeanBelow(steps, calm) / 1.2) / Math.SQRT2;
  const fromRows = within.length > 0 ? median(within) : Number.NaN;
  const noise = Number.isNaN(fromSteps) ? fromRows : Number.isNaN(fromRows) ? fromSteps : Math.min(fromSteps, fromRows);
  const step = quantum / Math.sqrt(12);
  return Math.max(Number.isNaN(noise) ? 0 : noise, step, 1e-5);
}

/** Sizes of the steps between neighbouring single samples, at every so many-th row. */
function stepsOf(level: Float64Array, count: Uint32Array, stride: number): Float64Array {
  const steps = new Float64Array(Math.ceil(level.length / stride));
  let seen = 0;
  for (let i = stride; i < level.length; i += stride) {
    if ((count[i] as number) > 2 || (count[i - 1] as number) > 2) continue;
    steps[seen++] = Math.abs((level[i] as number) - (level[i - 1] as number));
  }
  return steps.subarray(0, seen);
}

/** Spreads of the rows that hold several samples. */
function spreadsOf(spread: Float32Array, count: Uint32Array, stride: number): Float64Array {
  const spreads = new Float64Array(Math.ceil(spread.length / stride));
  let seen = 0;
  for (let i = stride; i < spread.length; i += stride) {
    if ((count[i] as number) > 2) spreads[seen++] = spread[i] as number;
  }
  return spreads.subarray(0, seen);
}

/** Root of the mean square of the values up to a limit; 0 of none. */
function rootMeanBelow(values: Float64Array, limit: number): number {
  let sum = 0;
  let kept = 0;
  for (let i = 0; i < values.length; i++) {
    const value = values[i] as number;
    if (value > limit) continue;
    sum += value * value;
    kept++;
  }
  return kept > 0 ? Math.sqrt(sum / kept) : 0;
}

/**
 * Spread of a series of medians about the smooth course that they follow, from second differences, so that a slope
 * does not count.
 *
 * @param values a regular series; NaN where nothing was seen
 * @param floor least answer, in the unit of the values
 */
export function courseNoise(values: Float64Array, floor: number): number {
  const bends: number[] = [];
  for (let i = 2; i < values.length; i++) {
    const bend = (values[i] as number) - 2 * (values[i - 1] as number) + (values[i - 2] as number);
    if (!Number.isNaN(bend)) bends.push(Math.abs(bend));
  }
  // The second difference of independent values has six times their variance.
  return bends.length < 5 ? floor : Math.max(floor, median(bends) / madOfNormal / Math.sqrt(6));
}
