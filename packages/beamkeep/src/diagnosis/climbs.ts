import { hour } from '../columns/index.js';
import { slowestSmoke, smokeGrowth } from '../numbers/index.js';
import { rollingMedian } from '../statistics/index.js';
import type { Climb } from './climb.js';
import { smoothingRows } from './excursions.js';
import type { View } from './view.js';

/*
 * Climbs: stretches in which the loss grows at 0.02 dB a minute or more on average, the pace of the smoke rule. Found
 * by summing growth beyond that pace and starting afresh when the sum is used up, so that a dithering growth counts
 * as one. Work is linear in rows.
 */

/** Slowest growth that the smoke rule asks about [dB/min], and the share of clean air that it must reach. */
const pace = slowestSmoke.value;
const leastGrowth = smokeGrowth.value / 100;

/**
 * Finds the climbs of a beam to 3 % or more, clearly beyond its noise.
 *
 * @param view the beam's record
 * @param left each row's loss with slow course and cycle taken off [dB]
 * @param raised how much larger the noise is on each row than usual
 */
export function findClimbs(view: View, left: Float64Array, raised: Float32Array): Climb[] {
  const { trace } = view;
  const { time } = trace;
  // A median over few samples: the three minutes that serve excursions would hide a growth of seconds.
  const window = Math.min(5, smoothingRows(view.interval));
  const smooth = rollingMedian(left, window);
  const n = smooth.length;
  const climbs: Climb[] = [];
  let start = 0;
  let sum = 0;
  let most = 0;
  let top = 0;
  const close = (start: number, top: number) => {
    const climb = measure(view, smooth, left, start, top, raised[top] as number);
    if (climb !== undefined) climbs.push(climb);
  };
  for (let i = 1; i < n; i++) {
    const minutes = ((time[i] as number) - (time[i - 1] as number)) / 60_000;
    sum += (smooth[i] as number) - (smooth[i - 1] as number) - pace * minutes;
    if (sum > most) {
      most = sum;
      top = i;
    }
    if (sum <= 0 || sum < 0.3 * most) {
      if (most > 0) close(start, top);
      sum = 0;
      most = 0;
      start = i;
      top = i;
    }
  }
  if (most > 0) close(start, top);
  return climbs;
}

function measure(
  view: View,
  smooth: Float64Array,
  left: Float64Array,
  from: number,
  to: number,
  raised: number,
): Climb | undefined {
  const { time, until, level } = view.trace;
  const rise = (smooth[to] as number) - (smooth[from] as number);
  const before = (level[to] as number) * 10 ** ((left[to] as number) / 10);
  const lost = before * (10 ** (-(smooth[from] as number) / 10) - 10 ** (-(smooth[to] as number) / 10));
  const sigma = view.sampleNoise * raised;
  if (lost < Math.max(leastGrowth, 5 * sigma, 3.5 * view.quantum)) return undefined;
  let low = from;
  while (low < to && (smooth[low + 1] as number) - (smooth[from] as number) < 0.1 * rise) low++;
  let high = low + 1;
  while (high < to && (smooth[high] as number) - (smooth[from] as number) < 0.9 * rise) high++;
  const took = (time[high] as number) - (until[low] as number);
  return { from, to, rise, lost, time: took, rows: high - low, cleared: clearedFrom(time, smooth, to, rise) };
}

/** Longest that a growth is followed to its clearing [ms]: what stays longer has not cleared. Own choice. */
const followed = 24 * hour;

function clearedFrom(time: Float64Array, smooth: Float64Array, top: number, rise: number): number {
  const least = (smooth[top] as number) - (2 / 3) * rise;
  const latest = (time[top] as number) + followed;
  for (let i = top + 1; i < smooth.length && (time[i] as number) <= latest; i++) {
    if ((smooth[i] as number) < least) return i;
  }
  return smooth.length;
}
