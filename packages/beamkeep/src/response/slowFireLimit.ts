import { slowestFireRate, slowFireAllowance, slowFireFactor } from '../numbers/index.js';

/**
 * The time by which a slow fire must have alarmed, compensation or not.
 *
 * @param thresholdDecibels the initial alarm threshold A [dB]
 * @param decibelsPerHour rate of rise R of the loss [dB/h], above 0
 * @returns the limit 1.6 A/R + 100 s [s], and whether the rule applies: to every R above A/4 an hour
 *
 * Source: EN 54-7:2001, 4.8; EN 54-12 believed to bound slow changes the same way (from memory).
 * @example slowFireLimit(1.87, 1) // { applies: true, limitSeconds: 10871.2 }
 */
export function slowFireLimit(
  thresholdDecibels: number,
  decibelsPerHour: number,
): { applies: boolean; limitSeconds: number } {
  return {
    applies: decibelsPerHour > slowestFireRate.value * thresholdDecibels,
    limitSeconds: (slowFireFactor.value * thresholdDecibels * 3600) / decibelsPerHour + slowFireAllowance.value,
  };
}
