import { decibelsToPercent, percentToDecibels } from '../attenuation/index.js';
import { compensationRatio } from '../numbers/index.js';

/**
 * The threshold that compensation may reach at most: 1.6 times the initial one, in decibels, not in percent.
 *
 * @param initialPercent alarm threshold at commissioning [%], above 0 and below 100
 * @returns the initial threshold [dB], and the highest it may become [dB] and [%], both against the initial clean air
 *
 * Source: EN 54-7:2001, 4.8; EN 54-12 believed the same (from memory). That the limit ends in a fault or an alarm:
 * EN 54-12:2002, 4.8.
 * @example compensationBound(35).limitPercent // 49.8, not 56
 */
export function compensationBound(initialPercent: number): {
  initialDecibels: number;
  limitDecibels: number;
  limitPercent: number;
} {
  const initialDecibels = percentToDecibels(initialPercent);
  const limitDecibels = compensationRatio.value * initialDecibels;
  return { initialDecibels, limitDecibels, limitPercent: decibelsToPercent(limitDecibels) };
}
