import { minute, rowAt } from '../columns/index.js';
import type { View } from './view.js';

/** A gap, or one value held, is told from this many samples and this long. */
export const leastSamples = 30;
export const leastTime = 5 * minute;

/** One value held for longer than this beam's noise and scale could give by chance. */
export interface HeldRun {
  /** First and last row. */
  readonly from: number;
  readonly to: number;
  readonly samples: number;
  /** Longest usual run of one value, in samples. */
  readonly usual: number;
}

/**
 * Share of the samples equal to the one before, and, on a scale of such a step [share of clean air], share of the log that
 * several runs make, from which a scale is so coarse that it holds values by itself. Own choice.
 */
const coarse = 0.8;
const coarseStep = 0.004;
const mostHeld = 0.5;
/** Runs that are more than faults, where the usual run is as long as that [samples]: own choice. */
const many = 3;
const longUsual = 20;

/**
 * Runs of one value, longer than this beam's noise and scale could give by chance; none where the scale is so coarse that
 * steady light is held as well.
 */
export function heldRuns(view: View): HeldRun[] {
  const { time, until, level, low, high, count } = view.trace;
  const n = level.length;
  const lengths = new Float64Array(n);
  const long: Omit<HeldRun, 'usual'>[] = [];
  let runs = 0;
  for (let i = 0; i < n; ) {
    let j = i;
    let samples = low[i] === high[i] ? (count[i] as number) : 1;
    while (j + 1 < n && level[j + 1] === level[i] && low[j + 1] === high[j + 1]) {
      if ((time[j + 1] as number) - (until[j] as number) > leastTime + leastSamples * view.interval) break;
      j++;
      samples += count[j] as number;
    }
    lengths[runs++] = samples;
    if (samples >= leastSamples && (until[j] as number) - (time[i] as number) >= leastTime) {
      long.push({ from: i, to: j, samples });
    }
    i = j + 1;
  }
  if (long.length === 0) return [];
  const rising = lengths.subarray(0, runs).sort();
  const held = long.flatMap((run) => {
    // The longest runs of other values show what the scale holds by itself.
    const shorter = rowAt(rising, run.samples);
    const usual = shorter === 0 ? 1 : (rising[Math.max(0, shorter - 5)] as number);
    return run.samples < 3 * usual ? [] : [{ ...run, usual }];
  });
  const pairs = held.reduce((sum, { from, to }) => sum + to - from, 0);
  const isCoarse =
    n - runs - pairs > coarse * (n - 1 - pairs) ||
    (held.length > 1 && view.quantum >= coarseStep && pairs > mostHeld * n) ||
    (held.length >= many && held.some(({ usual }) => usual >= longUsual));
  return isCoarse ? [] : held;
}
