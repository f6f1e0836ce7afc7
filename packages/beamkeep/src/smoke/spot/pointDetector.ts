import { chamberDelays, chamberLength } from '../../numbers/index.js';
import { refuseUnlessAbove0, refuseUnlessFrom0 } from '../refuse.js';

/*
 * What a beam does not have: a point detector measures in a chamber that smoke must first enter, which takes long where
 * the air is slow. A trainer sets the two side by side.
 */

/**
 * Share of the smoke outside that has come into the chamber, after smoke came at once and stays.
 *
 * @param seconds since then [s], 0 or more
 * @param airSpeed at the detector [m/s], more than 0
 * @param length characteristic length [m], more than 0; 1.8 where the maker names none
 * @returns 0 to 1
 *
 * Source: Heskestad's chamber, FDS Technical Reference Guide, Fire Detection Devices: dY/dt = (Yair - Y) u/L.
 * @example chamberShare(7.2, 0.25) // 0.632
 */
export function chamberShare(seconds: number, airSpeed: number, length: number = chamberLength.value): number {
  refuseUnlessFrom0('time', seconds, 's');
  refuseUnlessAbove0('air speed', airSpeed, 'm/s');
  refuseUnlessAbove0('characteristic length', length, 'm');
  return -Math.expm1((-seconds * airSpeed) / length);
}

/** The point detectors whose delays are published. */
export type PointDetector = keyof typeof chamberDelays;

/**
 * Delays of a point detector by the speed of the air: first nothing enters, then the chamber fills.
 *
 * @param airSpeed at the detector [m/s], more than 0
 * @returns seconds until smoke enters, and until the chamber has filled to 1 - 1/e
 *
 * Source: Cleary, as in the FDS User Guide, Smoke Detectors, table of suggested values.
 * @example chamberDelay('photoelectric1', 0.2) // { entry: 9, filling: 3.62 }
 */
export function chamberDelay(detector: PointDetector, airSpeed: number): { entry: number; filling: number } {
  refuseUnlessAbove0('air speed', airSpeed, 'm/s');
  const { entryFactor, entryPower, fillFactor, fillPower } = chamberDelays[detector];
  return {
    entry: entryFactor.value * airSpeed ** entryPower.value,
    filling: fillFactor.value * airSpeed ** fillPower.value,
  };
}
