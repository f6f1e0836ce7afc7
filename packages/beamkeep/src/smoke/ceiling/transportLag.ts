import { transportLag as mowrer } from '../../numbers/index.js';
import { refuseUnlessAbove0, refuseUnlessFrom0 } from '../refuse.js';

/** Seconds that smoke needs from a fire to a place. */
export interface TransportLag {
  /** Up to the height [s]. */
  readonly rising: number;
  /** Outward under the ceiling [s]. */
  readonly outward: number;
}

/**
 * How long smoke of a steady fire travels.
 *
 * @param heat release rate [kW], more than 0
 * @param height above the fuel [m], more than 0
 * @param radius distance from the axis [m], 0 or more
 * @throws UsageError for an argument out of its range
 *
 * Steady fires only: a growing fire's later smoke overtakes its first. Small in low rooms, ten seconds in high halls.
 * Source: Mowrer, Fire Technology, August 1990, as in the NUREG-1805 spreadsheet, ch. 11.
 * @example transportLag(1000, 3.9624, 3.048) // { rising: 0.42, outward: 0.32 }
 */
export function transportLag(heat: number, height: number, radius: number): TransportLag {
  refuseUnlessAbove0('heat release rate', heat, 'kW');
  refuseUnlessAbove0('height', height, 'm');
  refuseUnlessFrom0('radius', radius, 'm');
  const cube = Math.cbrt(heat);
  return {
    rising: (mowrer.plume.value * height ** (4 / 3)) / cube,
    outward: radius ** (11 / 6) / (mowrer.ceiling.value * cube * Math.sqrt(height)),
  };
}
