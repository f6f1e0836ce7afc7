import type { BeamRecord } from '../../packages/beamkeep/src/columns/index.js';
import { minute } from '../../packages/beamkeep/src/columns/index.js';
import type { CauseWord } from '../../packages/beamkeep/src/diagnosis/finding.js';
import { at, chanceOf, dayOf, hourOf, left, normalOf, recordOf, rise, type Sampled } from './kit.js';

/*
 * One plain record for each cause, and what was put in: the cause at work and nothing else.
 */

const month: Sampled = { days: 30 };

/** Loss of a Gaussian lobe turned by so many half-angles [dB]. */
export const lobe = (turn: number): number => 10 * Math.log10(2) * turn ** 2;

/** Movement of a structure through a day, -1 to 1: warmest in the afternoon, more on some days than on others. */
export const heatOfDay = (instant: number): number =>
  (0.6 + 0.4 * chanceOf(dayOf(instant), 7)) * Math.cos(((hourOf(instant) - 15) / 24) * 2 * Math.PI);

/** A puff of dust: quick in, slower out; hours since its begin. */
const puff = (hours: number): number => (hours < 0 ? 0 : (hours / 0.15) * Math.exp(1 - hours / 0.15));

/** Ragged puffs between 8 and 15 h on working days [dB]. */
export function dust(instant: number): number {
  const date = dayOf(instant);
  if (date % 7 > 4) return 0;
  let loss = 0;
  for (let k = 0; k < 5; k++) {
    const begin = 8 + 7 * chanceOf(100 * date + k, 3);
    loss += (0.3 + 0.4 * chanceOf(100 * date + k, 4)) * puff(hourOf(instant) - begin);
  }
  return loss * (0.8 + 0.4 * chanceOf(Math.floor(instant / (5 * minute)), 5));
}

/** Mist about the coldest hours, on two nights of three [dB]. */
function mist(instant: number): number {
  const date = dayOf(instant);
  if (date % 3 === 2) return 0;
  const depth = 0.4 + 0.3 * chanceOf(date, 9);
  return depth * rise(hourOf(instant), 2.5, 5) * (1 - rise(hourOf(instant), 6, 8.5));
}

export const fireBegins = at(12, 14);
/** Loss of a smouldering fire: doubling each quarter of an hour to 2.2 dB, then clearing over some hours [dB]. */
export function smoulder(instant: number): number {
  const minutes = (instant - fireBegins) / minute;
  if (minutes < 0) return 0;
  return minutes < 90 ? (2.2 * (2 ** (minutes / 15) - 1)) / (2 ** 6 - 1) : 2.2 * Math.exp(-(minutes - 90) / 60);
}

export const knock = at(13, 10);
export const cleaning = at(20, 9);

/** What is typical of each cause. */
export const typical: Readonly<Record<CauseWord, () => BeamRecord>> = {
  contamination: () => recordOf((t) => left((0.6 * (t - at(0))) / at0(30)), month),
  cleaned: () => recordOf((t) => (t < cleaning ? left((0.6 * (t - at(0))) / at0(20)) : 1), month),
  'misalignment-step': () => recordOf((t) => (t < knock ? 1 : 0.85), month),
  'misalignment-drift': () =>
    recordOf((t) => left(lobe((0.7 * (t - at(0))) / at0(60) + 0.08 * heatOfDay(t))), { days: 60 }),
  'building-movement': () => recordOf((t) => left(lobe(0.5 + 0.12 * heatOfDay(t))), month),
  obstruction: () => recordOf((t) => (t >= at(11, 10) && t < at(11, 12) ? 0.4 : 1), month),
  condensation: () => recordOf((t) => left(mist(t)), month),
  'process-aerosol': () => recordOf((t) => left(dust(t)), month),
  'ambient-light': () =>
    recordOf(
      (t) => 1 + (dayOf(t) % 4 === 3 ? 0 : 0.08 * rise(hourOf(t), 16, 16.3) * (1 - rise(hourOf(t), 17, 17.3))),
      month,
    ),
  vibration: () =>
    recordOf(
      // 128.2213 swings from sample to sample: the log shows their alias.
      (t) =>
        1 +
        (hourOf(t) > 8 && hourOf(t) < 16 && dayOf(t) % 7 < 5
          ? 0.03 * Math.sin(2 * Math.PI * 0.2213 * ((t - at(0)) / minute))
          : 0),
      { days: 10, intervalSeconds: 60 },
    ),
  'electrical-noise': () =>
    recordOf((t) => 1 + (t > at(10) && t < at(12) ? 0.023 * normalOf(Math.floor(t / minute), 2) : 0), { days: 30 }),
  'data-gap': () => recordOf((t) => (t > at(9, 6) && t < at(10, 18) ? Number.NaN : 1), month),
  'smoke-like': () => recordOf((t) => left(smoulder(t)), month),
};

/** So many days [ms]. */
const at0 = (days: number): number => at(days) - at(0);

/** Nothing at work. */
export const healthy = (): BeamRecord => recordOf(() => 1, month);
