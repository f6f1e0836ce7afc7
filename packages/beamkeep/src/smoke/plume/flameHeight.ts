import { cornerFlame, flameHeight as heskestad, smallFlame, wallFlame } from '../../numbers/index.js';
import { refuseUnlessFrom0 } from '../refuse.js';

/**
 * Mean height of the flames above the fuel.
 *
 * @param heat release rate [kW], 0 or more
 * @param diameter of the fire [m], 0 or more
 * @returns [m]; 0 where so little heat over so wide a fuel makes no joined flame
 * @throws UsageError for a negative argument
 *
 * Source: Heskestad; Karlsson and Quintiere, Enclosure Fire Dynamics, eq. 4.3.
 * @example flameHeight(1690, 1.6) // 2.96
 */
export function flameHeight(heat: number, diameter: number): number {
  refuseUnlessFrom0('heat release rate', heat, 'kW');
  refuseUnlessFrom0('diameter', diameter, 'm');
  return Math.max(0, heskestad.heat.value * heat ** 0.4 - heskestad.diameter.value * diameter); // eq. 4.3
}

/** Mean flame height over a small source [m]. Source: CIBSE Guide E, eq. 6.55. */
export const smallFlameHeight = (heat: number): number => smallFlame.value * heat ** 0.4; // eq. 6.55

/** Flame height of a fire along a wall [m], by its heat a metre of wall [kW/m]. Source: NUREG-1805, eq. 4-1. */
export const wallFlameHeight = (heatPerMetre: number): number => wallFlame.value * heatPerMetre ** (2 / 3); // eq. 4-1

/** Flame height of a fire in a corner [m]. Source: NUREG-1805, eq. 4-3. */
export const cornerFlameHeight = (heat: number): number => cornerFlame.value * heat ** 0.6; // eq. 4-3
