import type { WorkCalendar } from '../calendar.js';
import type { LocalClock } from '../clock.js';
import type { Lobe } from '../lobe.js';
import type { Random } from '../random.js';
import type { Place } from './places.js';
import type { Ranges } from './ranges.js';

/** What is settled about a log before its effects are drawn. */
export interface Setting {
  readonly seed: number;
  readonly clock: LocalClock;
  readonly ranges: Ranges;
  readonly place: Place;
  readonly calendar: WorkCalendar;
  /** [ms] */
  readonly start: number;
  /** [ms] */
  readonly end: number;
  /** [s] */
  readonly intervalSeconds: number;
  readonly days: number;
}

/** What is settled about a beam before its effects are drawn. */
export interface BeamSetting {
  readonly id: string;
  readonly lobe: Lobe;
  readonly offset: readonly [number, number];
  readonly noise: number;
  readonly step: number;
  /** What an effect must about pass to be labelled: slow, and fast [share of clean air]. */
  readonly slow: number;
  readonly fast: number;
  readonly alarmThreshold: number;
  /** Draws for this beam alone. */
  readonly draw: Random;
}

/** A moment within the log, between two shares of its length [ms]. */
export const within = ({ start, end }: Setting, draw: Random, low: number, high: number): number =>
  start + draw.between(low, high) * (end - start);

/** A number drawn from a range in its logarithm, and no less than a floor. */
export const atLeast = (draw: Random, floor: number, [low, high]: readonly [number, number]): number =>
  draw.logBetween(Math.max(low, Math.min(floor, 0.9 * high)), high);

/** Decibels of a loss given as a share. */
export const decibels = (share: number): number => -10 * Math.log10(1 - Math.min(share, 0.9999));
