import type { Run } from '../roughness.js';
import { logistic } from '../wording.js';

/*
 * How samples lie within their spread. A mount that swings passes its ends slowly and its middle fast, so its samples
 * crowd at two ends that they never pass; noise crowds about its middle and has no ends. Sampling slower than the
 * swing, whose samples then follow no order, does not change that. A swing about the peak of the lobe takes light by
 * either turn: its samples lie between the usual level and one below it, which noise, up and down alike, does not do,
 * and dust hardly, whose neighbours are alike.
 */

export interface SpreadShape {
  /** Fourth moment between that of a sine (0) and that of normal noise (1); more for spikes. */
  readonly noisiness: number;
  /** Autocorrelation of neighbouring samples, -1 to 1. */
  readonly alike: number;
  /** Share of the runs whose samples come back to the usual level and go but one way from there: down. */
  readonly fromPeak: number;
}

/** Fourth moment over the square of the second: of a sine, and of so many normal values (Fisher's, from memory). */
const sine = 1.5;
const normal = (n: number): number => (3 * (n - 1)) / (n + 1);

/** Over the greatest depth: the least depth of what comes back to the usual level, and most rise of what goes down only. */
const [comesBack, downOnly] = [0.1, 0.4];

/** Measures the samples of some runs. */
export function spreadShape(depth: Float64Array, runs: readonly Run[]): SpreadShape {
  let [noisiness, together, power, fromPeak] = [0, 0, 0, 0];
  for (const { from, to, up, down } of runs) {
    const n = to + 1 - from;
    let [sum, least] = [0, Number.POSITIVE_INFINITY];
    for (let i = from; i <= to; i++) {
      const v = depth[i] as number;
      sum += v;
      least = Math.min(least, v);
    }
    const mean = sum / n;
    let [second, fourth, last] = [0, 0, Number.NaN];
    for (let i = from; i <= to; i++) {
      const off = (depth[i] as number) - mean;
      const square = off * off;
      second += square;
      fourth += square * square;
      if (!Number.isNaN(last)) together += off * last;
      last = off;
    }
    power += second;
    const moment = (fourth * n) / Math.max(second ** 2, 1e-24);
    noisiness += (moment - sine) / (normal(n) - sine);
    if (least < comesBack * down && up < downOnly * down) fromPeak++;
  }
  const n = Math.max(1, runs.length);
  return { noisiness: noisiness / n, alike: together / Math.max(power, 1e-18), fromPeak: fromPeak / n };
}

/** Runs that the whole beam's shape counts for beside those of a stretch: a few runs tell no fourth moment. Own choice. */
const ofBeam = 8;

/** The shape of a stretch of so many runs, with that of all the rough runs of the beam to lean on. */
export function leaning(own: SpreadShape, beam: SpreadShape, runs: number): SpreadShape {
  const mixed = (a: number, b: number): number => (a * runs + b * ofBeam) / (runs + ofBeam);
  return {
    noisiness: mixed(own.noisiness, beam.noisiness),
    alike: mixed(own.alike, beam.alike),
    fromPeak: mixed(own.fromPeak, beam.fromPeak),
  };
}

/**
 * Bounds of what shakes though its samples follow no order: neighbours less alike than that; between two ends, nearer to
 * a sine than to noise; from the peak, where no noise is, no spikes. Between simulated shaking and simulated noise.
 */
const strangers = 0.35;
const strangersFromPeak = 0.12;
const nearSine = 0.58;
const noSpikes = 1.2;

/**
 * How clearly samples lie as a shaking mount leaves them, 0 to 1; above a half they do.
 *
 * @param twoSided share of the runs that spread up and down alike
 */
export function shaken({ noisiness, alike, fromPeak }: SpreadShape, twoSided: number): number {
  if (twoSided >= 0.5) return alike < strangers ? logistic(5 * (nearSine - noisiness)) : 0;
  return alike < strangersFromPeak && fromPeak >= 0.5 ? logistic(2 * (noSpikes - noisiness)) : 0;
}
