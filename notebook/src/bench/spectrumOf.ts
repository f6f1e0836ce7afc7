import { day, rowAt, type Trace } from 'beamkeep/columns';
import { welch } from 'beamkeep/statistics';
import type { Window } from './reading.js';

/*
 * Which periods return in a stretch of a log. The loss is laid on an even grid, a spectrum is averaged over
 * overlapping segments, and each line is told as the swing of the sine that would make it.
 */

/** Swing by period, longest period first. */
export interface SwingSpectrum {
  /** [ms] */
  readonly period: Float64Array;
  /** Half of trough to crest of the sine that makes the line [dB]. */
  readonly swing: Float64Array;
  /** Segments that were averaged. */
  readonly segments: number;
  /** Step of the grid [ms]: what returns faster than twice this shows at a slower period, or not at all. */
  readonly step: number;
}

/** Most steps of the grid. */
const mostSteps = 65_536;
/** Fewest steps of a segment: fewer tell nothing. */
const fewestSteps = 32;
/** Longest period that is asked for. */
const longestSegment = 16 * day;

/**
 * The spectrum of a stretch.
 *
 * @param trace the beam's trace
 * @param window the stretch
 * @param interval usual interval between samples [ms]
 * @returns the spectrum; empty where the stretch is too short
 */
export function spectrumOf(trace: Trace, window: Window, interval: number): SwingSpectrum {
  const length = window.to - window.from;
  const step = Math.max(interval, length / mostSteps);
  const loss = lossOnGrid(trace, window, step);
  const segment = powerOfTwo(Math.min(loss.length / 2, longestSegment / step));
  if (segment < fewestSteps) return { period: new Float64Array(0), swing: new Float64Array(0), segments: 0, step };
  const { frequency, power, segments } = welch(loss, { segment, scaling: 'spectrum' });
  // The first line is the mean and the second is smeared by it.
  return {
    period: frequency.subarray(2).map((each) => step / each),
    swing: power.subarray(2).map((each) => Math.sqrt(2 * each)),
    segments,
    step,
  };
}

/** Loss on an even grid [dB]: the mean level of each step; NaN where it has no sample or no light. */
function lossOnGrid(trace: Trace, { from, to }: Window, step: number): Float64Array {
  const cells = Math.floor((to - from) / step);
  const sum = new Float64Array(cells);
  const count = new Float64Array(cells);
  for (let row = rowAt(trace.time, from); row < trace.time.length; row++) {
    const cell = Math.floor(((trace.time[row] as number) - from) / step);
    if (cell >= cells) break;
    sum[cell] = (sum[cell] as number) + (trace.level[row] as number) * (trace.count[row] as number);
    count[cell] = (count[cell] as number) + (trace.count[row] as number);
  }
  return sum.map((total, cell) => {
    const level = total / (count[cell] as number);
    return level > 0 ? -10 * Math.log10(level) : Number.NaN;
  });
}

/** The largest power of two that is no more than a number; 0 for less than 1. */
const powerOfTwo = (most: number): number => (most >= 1 ? 2 ** Math.floor(Math.log2(most)) : 0);

/** A swing below this is nothing to anybody [dB]. */
const leastTold = 0.001;

/** A period that stands out. */
export interface Peak {
  /** [ms] */
  readonly period: number;
  /** [dB] */
  readonly swing: number;
}

/**
 * The periods that stand out: at least three times as strong as those around them, strongest first.
 *
 * @param spectrum the spectrum
 * @param most how many at most
 */
export function peaksOf({ period, swing }: SwingSpectrum, most: number): Peak[] {
  const reach = 12;
  const peaks: Peak[] = [];
  for (let row = 1; row < swing.length - 1; row++) {
    const here = swing[row] as number;
    if (!(here > (swing[row - 1] as number) && here >= (swing[row + 1] as number))) continue;
    const around = swing.slice(Math.max(0, row - reach), row + reach + 1).sort();
    if (here >= leastTold && here >= 3 * (around[around.length >> 1] as number))
      peaks.push({ period: period[row] as number, swing: here });
  }
  return peaks.sort((a, b) => b.swing - a.swing).slice(0, most);
}
