import { day } from '../columns/index.js';
import type { Beam } from '../site/index.js';
import { type Break, type DailyLoss, dailyLoss, smoothed, withoutStrays } from './dailyLoss.js';
import { draws } from './draws.js';
import { firstPassages } from './firstPassage.js';
import { clocked, weighedLaws } from './laws.js';
import { type Margin, margin } from './margin.js';
import { readings } from './readings.js';

/** What a forecast is made from. */
export interface ForecastInput {
  /** Instants for which the losses stand, the middle of a day or an hour each [ms since 1970-01-01 UTC], rising. */
  readonly time: Float64Array;
  /** Slow loss: what is left when fast events and the daily movement are taken off [dB]; NaN where it is not known. */
  readonly loss: Float64Array;
  /** Where the level jumps, in order of time. What lies before the last restoration teaches the rate, not the level. */
  readonly breaks: readonly Break[];
  /** How far the daily low of the sway lies below the day's middle [dB], 0 or more. */
  readonly dailyLow: number;
  /** Alarm threshold [%] and compensation of the beam. */
  readonly beam: Pick<Beam, 'alarmThreshold' | 'compensation'>;
  /** Whether the aim is known to creep, so that loss may speed up more than dirt alone does. */
  readonly creeping?: boolean;
  /** Of the futures drawn; the same seed gives the same forecast. */
  readonly seed?: number;
}

/** When the margin is gone: an 80 % interval of instants [ms since 1970-01-01 UTC]. */
export interface MarginForecast {
  /** Slow loss, as obscuration, that ends the margin [%]. */
  readonly obscuration: number;
  readonly ends: Margin['ends'];
  /** As likely before as after. */
  readonly median: number;
  /** One in ten before it. */
  readonly low: number;
  /** One in ten after it; null when open. */
  readonly high: number | null;
}

/** Shortest record that a trend is read from [days]: a week, so that each weekday was seen. */
const leastDays = 7;
/** What is learned from [days before the last reading]: older dirt tells of other times. */
const mostDays = 400;
/** How far a record bears a look ahead: ten times its length, at most ten years. */
const horizonTimes = 10;
const horizonDays = 3652;
/** How far the level that ends the margin may be off: the clean-air reading [dB], and the daily low, as a share of it. */
const levelSpread = 0.02;
const lowSpread = 0.3;
const futures = 600;
/** A rate that many times the mean will not be kept up over a horizon. */
const mostHaste = 4;

/**
 * Forecasts when slow loss, at its daily low, uses up the margin of a beam.
 *
 * @returns null where no trend bears a forecast: a record under a week, no growth beyond the noise, growth that levels
 * off, or a day further off than ten times the record. Where the margin is gone already: the day on which that was so.
 *
 * Many laws of growth (steady in dB or in obscuration, towards a ceiling, by bursts, on work days, with dirtier and cleaner
 * weeks) are weighed
 * by how well they explain the daily losses since the last restoration and, for the rate alone, before it; futures are
 * drawn from all of them. The growth is taken to go on as before: a change of what is done in the hall is not foreseen.
 */
export function forecastMargin(input: ForecastInput): MarginForecast | null {
  const { decibels, ...said } = margin(input.beam);
  const level = decibels - input.dailyLow;
  const all = withoutStrays(dailyLoss(input.time, input.loss, input.breaks));
  const last = all.at(-1);
  if (!last) return null;
  const gone = reachedAlready(all, level);
  if (gone !== undefined) return { ...said, median: gone, low: gone, high: gone };
  const days = all.filter(({ at }) => at >= last.at - mostDays);
  const watched = last.at - (days[0]?.at ?? last.at);
  const plain = watched < leastDays ? undefined : readings(days, input.breaks);
  if (!plain) return null;
  const horizon = Math.min(horizonDays, horizonTimes * watched);
  if (last.loss + mostHaste * plain.pilot * horizon < level) return null;
  const clock = clocked(plain);
  const laws = weighedLaws(clock, input.creeping ?? false);
  const spread = Math.hypot(levelSpread, lowSpread * input.dailyLow);
  const passages = firstPassages(laws, clock, { level, spread, horizon, futures }, draws(input.seed ?? 1));
  const instant = (share: number): number => (last.at + (passages[Math.floor(share * futures)] as number)) * day;
  if (instant(0.5) === Number.POSITIVE_INFINITY) return null;
  const high = instant(0.9);
  return {
    ...said,
    median: instant(0.5),
    low: instant(0.1),
    high: high === Number.POSITIVE_INFINITY ? null : high,
  };
}

/** Instant from which the loss of the last run, smoothed over five days, has stayed at the level; undefined if below. */
function reachedAlready(days: readonly DailyLoss[], level: number): number | undefined {
  const run = days.filter((one) => one.run === days.at(-1)?.run);
  const smooth = smoothed(run);
  let first: number | undefined;
  for (let row = run.length - 1; row >= 0 && (smooth[row] as number) >= level; row--) first = run[row]?.at;
  return first === undefined ? undefined : first * day;
}
