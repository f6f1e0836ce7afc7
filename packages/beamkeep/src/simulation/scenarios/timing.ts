import { day } from '../../columns/index.js';
import type { Random } from '../random.js';

/** How often a log is sampled and how long it is. */
export interface Timing {
  /** [s] */
  readonly intervalSeconds: number;
  readonly samples: number;
}

/** Pace of a log: what must be seen in it decides how often it is sampled and for how long. */
export type Pace = 'fast' | 'medium' | 'slow';

/** Intervals [s] with their weights, and shortest and longest log [d]. */
const paces: Record<
  Pace,
  { readonly intervals: readonly (readonly [number, number])[]; readonly days: readonly [number, number] }
> = {
  fast: {
    intervals: [
      [0.02, 1],
      [0.05, 1],
      [0.1, 2],
      [0.2, 1],
      [0.5, 1],
      [1, 1],
    ],
    days: [0.006, 2],
  },
  medium: {
    intervals: [
      [1, 1],
      [2, 1],
      [5, 1],
      [10, 2],
      [30, 1],
      [60, 1],
    ],
    days: [0.25, 21],
  },
  slow: {
    intervals: [
      [60, 3],
      [120, 1],
      [300, 5],
      [600, 2],
      [900, 4],
    ],
    days: [14, 365],
  },
};

/**
 * Interval and length for a pace.
 *
 * @param budget most samples
 * @param needed shortest log that shows what it must [d]
 */
export function drawTiming(draw: Random, pace: Pace, budget: number, needed: number): Timing {
  const { intervals, days } = paces[pace];
  const samplesIn = (length: number, interval: number) => (length * day) / (1000 * interval);
  const shortest = Math.max(days[0], 1.2 * needed);
  const possible = intervals.filter(([interval]) => samplesIn(shortest, interval) <= budget);
  const [last] = intervals.slice(-1);
  const intervalSeconds = draw.weighted(possible.length > 0 ? possible : last ? [last] : intervals);
  const least = Math.min(samplesIn(shortest, intervalSeconds), budget);
  const most = Math.max(least, Math.min(samplesIn(days[1], intervalSeconds), budget));
  return { intervalSeconds, samples: Math.max(200, Math.round(draw.logBetween(least, most))) };
}
