import { day } from '../columns/index.js';
import { median, medianAbsoluteDeviation } from '../statistics/index.js';

/*
 * The slow loss by days: what the trend is fitted to. Rows closer together than a day are drawn together by their
 * median. A break in the level (a cleaning, a knock) starts a new run, so a day with a break in it gives two rows.
 */

/** An instant at which the level jumps. */
export interface Break {
  /** First instant after the jump [ms since 1970-01-01 UTC]. */
  readonly time: number;
  /** Whether loss was removed for good (cleaning, re-aiming, rain); else the jump is of another kind (a knock). */
  readonly restoration: boolean;
}

/** One day of a run. */
export interface DailyLoss {
  /** Instant for which the loss stands [days since 1970-01-01 UTC]. */
  readonly at: number;
  /** Slow loss [dB]. */
  readonly loss: number;
  /** Number of the run, from 0: it rises by one at each break. */
  readonly run: number;
}

/**
 * Draws a series of slow loss together by days.
 *
 * @param time instants for which the losses stand [ms since 1970-01-01 UTC], rising
 * @param loss slow loss [dB]; NaN where it is not known (left out)
 * @param breaks in order of time
 */
export function dailyLoss(time: Float64Array, loss: Float64Array, breaks: readonly Break[]): DailyLoss[] {
  const days: DailyLoss[] = [];
  let [today, run] = [Number.NaN, 0];
  let [instants, losses]: [number[], number[]] = [[], []];
  const close = (): void => {
    if (losses.length === 0) return;
    const at = instants.reduce((sum, instant) => sum + instant, 0) / instants.length;
    days.push({ at, loss: median(losses), run });
    [instants, losses] = [[], []];
  };
  for (const [row, instant] of time.entries()) {
    const value = loss[row] as number;
    if (Number.isNaN(value)) continue;
    let passed = run;
    while ((breaks[passed]?.time ?? Number.POSITIVE_INFINITY) <= instant) passed++;
    const here = Math.floor(instant / day);
    if (here !== today || passed !== run) close();
    [today, run] = [here, passed];
    instants.push(instant / day);
    losses.push(value);
  }
  close();
  return days;
}

/** Steps of the loss from day to day, within runs [dB]. */
export function dailySteps(days: readonly DailyLoss[]): number[] {
  return days.flatMap((now, row) => {
    const before = days[row - 1];
    return before?.run === now.run ? [now.loss - before.loss] : [];
  });
}

/** Spread of one day's loss about its neighbours', which dirt hardly widens and a few bursts do not [dB]. */
export const dailyNoise = (days: readonly DailyLoss[]): number =>
  Math.max(medianAbsoluteDeviation(dailySteps(days)) / Math.SQRT2, leastNoise);

/** Below this the daily medians of any beam differ [dB]: 0.01 %. */
const leastNoise = 0.0005;

/** Leaves out days that lie far off both neighbours in one direction: something passed by, no dirt. */
export function withoutStrays(days: readonly DailyLoss[]): DailyLoss[] {
  const far = 8 * dailyNoise(days);
  return days.filter((now, row) => {
    const [before, after] = [days[row - 1], days[row + 1]];
    if (before?.run !== now.run || after?.run !== now.run) return true;
    const [up, down] = [now.loss - before.loss, now.loss - after.loss];
    return up * down <= 0 || Math.min(Math.abs(up), Math.abs(down)) <= far;
  });
}

/** Median of five days about each, within its run [dB]. */
export function smoothed(days: readonly DailyLoss[]): Float64Array {
  return Float64Array.from(days, ({ run }, row) => {
    const about = days.slice(Math.max(0, row - 2), row + 3);
    return median(about.filter((other) => other.run === run).map(({ loss }) => loss));
  });
}
