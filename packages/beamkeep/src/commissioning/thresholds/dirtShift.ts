import { percentToDecibels } from '../../attenuation/index.js';
import { UsageError } from '../../columns/index.js';
import type { Beam } from '../../site/index.js';

/** What an alarm threshold is worth under so much dirt. */
export interface DirtShift {
  /** Light that dirt takes [%]. */
  readonly dirt: number;
  /** Obscuration by smoke that then raises the alarm [%]; 0 where dirt alone does. */
  readonly smoke: number;
  /** The same [dB]. */
  readonly smokeDecibels: number;
  /** `alarm`: dirt alone is an alarm; `fault`: the equipment's compensation is used up. */
  readonly ends: 'no' | 'alarm' | 'fault';
}

/** Dirt of the usual table [%]. */
export const usualDirt: readonly number[] = [0, 5, 10, 15, 20, 25, 30];

/**
 * How dirt moves the true threshold. Losses add in decibels: what dirt has taken, smoke need not take.
 *
 * @param beam alarm threshold [%] and the equipment's compensation: `none` and `unknown` count as none
 * @param dirt light that dirt takes [%], from 0 and below 100
 * @throws UsageError for dirt that is no obscuration
 *
 * With compensation the threshold stays until its limit, which ends in a fault (EN 54-12:2002, 4.8).
 * @example dirtShift({ alarmThreshold: 35, compensation: 'none' }, 20).smoke // 18.75
 */
export function dirtShift(
  { alarmThreshold, compensation }: Pick<Beam, 'alarmThreshold' | 'compensation'>,
  dirt: number,
): DirtShift {
  if (!(dirt >= 0 && dirt < 100)) throw new UsageError(`dirt ${dirt} % is no loss of light: from 0, below 100`);
  if (typeof compensation === 'object') {
    const over = percentToDecibels(dirt) >= compensation.limitDecibels;
    if (!over) return { dirt, smoke: alarmThreshold, smokeDecibels: percentToDecibels(alarmThreshold), ends: 'no' };
    return { ...uncompensated(alarmThreshold, dirt, compensation.limitDecibels), ends: 'fault' };
  }
  const shift = uncompensated(alarmThreshold, dirt, 0);
  return { ...shift, ends: shift.smoke > 0 ? 'no' : 'alarm' };
}

/** The threshold under dirt that a gain makes up for in part [dB]. */
function uncompensated(alarmThreshold: number, dirt: number, gain: number): Omit<DirtShift, 'ends'> {
  const left = ((100 - dirt) / 100) * 10 ** (gain / 10);
  const smoke = Math.max(100 - (100 - alarmThreshold) / left, 0);
  return { dirt, smoke, smokeDecibels: percentToDecibels(smoke) };
}
