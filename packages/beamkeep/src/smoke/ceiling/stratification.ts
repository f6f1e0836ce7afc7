import { gradientRise, stratification } from '../../numbers/index.js';
import { refuseUnlessAbove0, refuseUnlessFrom0 } from '../refuse.js';

/*
 * Smoke rises while it is warmer than the air around it. Under a roof in the sun, or in a hall whose air grows warmer
 * with height, a plume stops below the roof and spreads there; beams at the roof then see it late, or only when the
 * fire has grown. This is why high halls get a second row of beams lower down.
 */

/**
 * Warmest roof air that a plume still enters.
 *
 * @param convectiveHeat [kW], more than 0
 * @param ceiling height above the fuel [m], more than 0
 * @returns how much warmer than at the fuel [K]
 *
 * Source: NFPA 92B, 2000, A.3.4: dT = 1300 Qc^(2/3)/H^(5/3) in degF, Btu/s and ft.
 * @example warmestRoof(60, 20) // 10 K
 */
export function warmestRoof(convectiveHeat: number, ceiling: number): number {
  refuseUnlessAbove0('convective heat', convectiveHeat, 'kW');
  refuseUnlessAbove0('ceiling height', ceiling, 'm');
  return stratification.value * convectiveHeat ** (2 / 3) * ceiling ** (-5 / 3);
}

/**
 * Least fire whose smoke enters warm roof air: the way back from `warmestRoof`.
 *
 * @param roofRise how much warmer the roof air is than the air at the fuel [K], 0 or more
 * @returns convective heat [kW]
 * @example leastFire(10, 20) // 60
 */
export function leastFire(roofRise: number, ceiling: number): number {
  refuseUnlessFrom0('roof air warmer by', roofRise, 'K');
  refuseUnlessAbove0('ceiling height', ceiling, 'm');
  return (roofRise / stratification.value) ** 1.5 * ceiling ** 2.5;
}

/**
 * Height at which a plume stops in air that grows warmer evenly with height.
 *
 * @param convectiveHeat [kW], more than 0
 * @param gradient of the air [K/m], more than 0; at 0 nothing stops it
 * @returns [m] above the fuel
 *
 * Source: NFPA 92 (from memory); agrees with A.3.4 of NFPA 92B within 0.2 %.
 * @example riseHeight(200, 1) // 20.8
 */
export function riseHeight(convectiveHeat: number, gradient: number): number {
  refuseUnlessAbove0('convective heat', convectiveHeat, 'kW');
  refuseUnlessFrom0('temperature gradient', gradient, 'K/m');
  return gradientRise.value * convectiveHeat ** 0.25 * gradient ** (-3 / 8);
}

/**
 * Temperature of the warmest layer that a weak plume can enter: equal density.
 *
 * @param temperature of the air around [K]
 * @param convectiveHeat of the plume [kW]
 * @param massFlow of the plume at the layer [kg/s], more than 0
 * @param specificHeat of air [kJ/(kg K)]
 * @returns [K]
 *
 * Source: CFAST Technical Reference Guide, Weak Plumes: T + Qc/(m cp).
 */
export const warmestLayer = (
  temperature: number,
  convectiveHeat: number,
  massFlow: number,
  specificHeat: number,
): number => temperature + convectiveHeat / (massFlow * specificHeat);
