import { virtualOrigin as heskestad } from '../../numbers/index.js';
import { refuseUnlessAbove0, refuseUnlessFrom0 } from '../refuse.js';

/**
 * Height of the point from which the plume seems to rise.
 *
 * @param heat release rate, radiation included [kW], 0 or more
 * @param diameter of the fire [m], 0 or more
 * @returns [m] above the fuel; below it for wide weak fires
 * @throws UsageError for a negative argument
 *
 * Source: Heskestad; Enclosure Fire Dynamics, eq. 4.23; NUREG-1805, eq. 9-3.
 * @example virtualOrigin(1690, 1.6) // -0.009
 */
export function virtualOrigin(heat: number, diameter: number): number {
  refuseUnlessFrom0('heat release rate', heat, 'kW');
  refuseUnlessFrom0('diameter', diameter, 'm');
  return heskestad.heat.value * heat ** 0.4 - heskestad.diameter.value * diameter; // eq. 4.23
}

/** Diameter of the round fire of the same area [m]. Source: NUREG-1805, eq. 9-4. */
export function effectiveDiameter(area: number): number {
  refuseUnlessAbove0('area', area, 'm²');
  return Math.sqrt((4 * area) / Math.PI); // eq. 9-4
}
