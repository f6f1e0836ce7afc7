import { decibelsToPercent, percentToDecibels } from '../attenuation/index.js';
import type { Beam } from '../site/index.js';

/** How much slow loss a beam bears, and what comes when it is used up. */
export interface Margin {
  /** Slow loss at which it ends [dB]. */
  readonly decibels: number;
  /** The same as obscuration [%]. */
  readonly obscuration: number;
  /** `alarm`: dirt alone reaches the alarm threshold; `compensation-limit`: the equipment's gain ends, in a fault. */
  readonly ends: 'alarm' | 'compensation-limit';
}

/**
 * Margin of a beam.
 *
 * @param beam of the site: its alarm threshold [%] and its compensation
 *
 * Where the equipment makes up for slow loss, the limit of that ends the margin, with a signal.
 * Source: EN 54-12:2002, 4.8.
 * @example margin({ alarmThreshold: 35, compensation: 'none' }) // 1.87 dB, 35 %, alarm
 */
export function margin({ alarmThreshold, compensation }: Pick<Beam, 'alarmThreshold' | 'compensation'>): Margin {
  if (typeof compensation === 'string') {
    return { decibels: percentToDecibels(alarmThreshold), obscuration: alarmThreshold, ends: 'alarm' };
  }
  const decibels = compensation.limitDecibels;
  return { decibels, obscuration: decibelsToPercent(decibels), ends: 'compensation-limit' };
}
