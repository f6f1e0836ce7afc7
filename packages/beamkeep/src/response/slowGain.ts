import { decibelsToPercent, percentToDecibels } from '../attenuation/index.js';
import { hour } from '../columns/index.js';
import { slowestFireRate, slowFireFactor } from '../numbers/index.js';
import { reached } from './blockWatch.js';

/*
 * The slow gain by which equipment makes up for dirt. It follows the loss, never faster than its rate, never beyond its
 * limit, and stands still while the alarm threshold is passed:
 *
 *     seen loss [dB] = loss - gain
 *
 * A model for logs of the light *before* the gain, used only where it is asked for. A log of the level after the gain
 * holds the gain already: applying it again would hide smoke.
 *
 * How fast may it be? A fire that grows by R dB an hour past a gain of c dB an hour comes to a threshold A at
 * A / (R - c). The bound 1.6 A / R for every R above A / 4 (see slowFireLimit) allows c = 0.375 R at the slowest of them:
 * 0.094 A an hour. That is the rate taken where none is given: the slowest reaction that the bound allows.
 */

/** The equipment's slow gain. */
export interface SlowGainSettings {
  /** Gain at which it ends [dB]. */
  readonly limitDecibels: number;
  /** Fastest change of the gain [dB/h]; left out: the fastest that the bound on slow fires allows. */
  readonly decibelsPerHour?: number;
}

/** What a slow gain remembers: plain data. */
export interface SlowGainMemory {
  /** [dB], 0 to the limit */
  readonly gain: number;
  /** Last usable sample [ms]; NaN before the first. */
  readonly time: number;
}

/** A slow gain, fed sample by sample. */
export interface SlowGain {
  /**
   * Takes the next sample and tells what the equipment sees of it.
   *
   * @param time instant [ms]
   * @param obscuration before the gain [%]; NaN is missing and changes nothing
   * @returns obscuration after the gain [%], and whether the gain has come to its end
   */
  feed(time: number, obscuration: number): { obscuration: number; atLimit: boolean };
  /** What to carry over to the next part of the log. */
  memory(): SlowGainMemory;
}

/** Fastest slow gain that the bound on slow fires allows, as a share of the alarm threshold [dB/h per dB]. */
export const fastestGainShare = slowestFireRate.value * (1 - 1 / slowFireFactor.value);

/**
 * A model of the equipment's slow gain, for logs of the light before it.
 *
 * @param settings limit [dB] and rate [dB/h]
 * @param alarmThreshold beyond which the gain stands still [%]
 * @param carried memory from the part of the log before this one
 *
 * Source: derived from the bound on slow fires of EN 54-7:2001, 4.8 (from memory); that the limit ends in a signal:
 * EN 54-12:2002, 4.8.
 */
export function slowGain(
  { limitDecibels, decibelsPerHour }: SlowGainSettings,
  alarmThreshold: number,
  carried: SlowGainMemory = { gain: 0, time: Number.NaN },
): SlowGain {
  const rate = (decibelsPerHour ?? fastestGainShare * percentToDecibels(alarmThreshold)) / hour;
  let { gain, time: last } = carried;
  return {
    feed(time, obscuration) {
      if (Number.isNaN(obscuration)) return { obscuration, atLimit: gain >= limitDecibels };
      const loss = percentToDecibels(obscuration);
      const seen = decibelsToPercent(loss - gain);
      const elapsed = Number.isNaN(last) ? 0 : time - last;
      last = time;
      if (!reached(seen, alarmThreshold)) {
        const step = rate * elapsed;
        gain = Math.min(Math.max(gain + Math.min(Math.max(loss - gain, -step), step), 0), limitDecibels);
      }
      return { obscuration: decibelsToPercent(loss - gain), atLimit: gain >= limitDecibels };
    },
    memory: () => ({ gain, time: last }),
  };
}
