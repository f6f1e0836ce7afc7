import { type Break, type DailyLoss, dailyNoise, smoothed } from './dailyLoss.js';
import type { SoilingClock } from './soilingWeek.js';

/** Daily losses made ready for the laws of growth. */
export interface Readings {
  readonly days: readonly DailyLoss[];
  /** What of each day's loss is taken for dirt: smoothed, above the ground of its run [dB], 0 or more. */
  readonly soil: Float64Array;
  /** Loss of the last run that is no dirt [dB]: what knocks took; below 0 where the beam began brighter than clean air. */
  readonly ground: number;
  /** First guess of the rate [dB/day], above 0. */
  readonly pilot: number;
}

/** How many noises a loss must gain before it counts as a trend. */
const leastGain = 4;

/**
 * Readings of a series of daily losses.
 *
 * @returns undefined where the loss does not grow beyond its noise
 */
export function readings(days: readonly DailyLoss[], breaks: readonly Break[]): Readings | undefined {
  const smooth = smoothed(days);
  const knocked = knocks(days, smooth, breaks);
  const brightest = smooth.reduce((least, loss, row) => Math.min(least, loss - (knocked[row] as number)), 0);
  const soil = smooth.map((loss, row) => Math.max(0, loss - (knocked[row] as number) - brightest));
  const middles = smoothed(days.map(({ at, run }) => ({ at, loss: at, run }))); // instants for which `smooth` stands
  let [gained, length] = [0, 0];
  for (const [row, now] of days.entries()) {
    const before = days[row - 1];
    if (before?.run !== now.run) continue;
    gained += (smooth[row] as number) - (smooth[row - 1] as number);
    length += (middles[row] as number) - (middles[row - 1] as number);
  }
  if (gained <= leastGain * dailyNoise(days)) return undefined;
  return { days, soil, ground: (knocked.at(-1) ?? 0) + brightest, pilot: gained / length };
}

/** What knocks took, day by day: it jumps with them; a restoration leaves of it at most the loss that it leaves. */
function knocks(days: readonly DailyLoss[], smooth: Float64Array, breaks: readonly Break[]): number[] {
  let offset = 0;
  return days.map(({ run }, row) => {
    const before = days[row - 1];
    for (let passed = before?.run ?? run; passed < run; passed++) {
      const here = smooth[row] as number;
      const jump = here - (smooth[row - 1] as number);
      offset = Math.max(0, breaks[passed]?.restoration === true ? Math.min(offset, here) : offset + jump);
    }
    return offset;
  });
}

/** Readings with the clock by which dirt gathers. */
export interface ClockedReadings extends Readings {
  readonly clock: SoilingClock;
}
