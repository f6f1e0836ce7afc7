import {
  flameFlow,
  plumeFlow as flow,
  greatestRise,
  greatestSpeed,
  plumeFlowOfAir,
  plumeRadius,
  plumeRise as rise,
  plumeSpeed as speed,
  plumeWidth as width,
} from '../../numbers/index.js';
import { type Air, densityWarmer, flowGroup, hallAir, temperatureGroup } from '../air.js';
import { refuseUnlessAbove0, refuseUnlessShare } from '../refuse.js';
import { flameHeight } from './flameHeight.js';
import { virtualOrigin } from './origin.js';

/*
 * The plume of a fire in the open, as Heskestad drew it:
 *
 *            \   b   /       b   radius to half the temperature rise
 *             \  |  /
 *              \ | /         z   height above the fuel
 *          - - -\|/- - -     L   flame height: above it the laws of the plume hold
 *               /|\
 *      ________/_|_\______   z0  virtual origin, near the fuel
 *
 * Holds for round fires that stand free in still air. Next to walls: `besideWalls`.
 */

/** A plume by its fire. */
export interface PlumeFire {
  /** Heat release rate [kW], more than 0. */
  readonly heat: number;
  /** Share of it that leaves as radiation, 0 or more and less than 1. */
  readonly radiativeShare: number;
  /** Diameter of the fire [m], more than 0. */
  readonly diameter: number;
}

/** A plume at one height. */
export interface Plume {
  /** Air and smoke that rise [kg/s]. */
  readonly massFlow: number;
  /** Temperature rise on the axis [K], at most 900. */
  readonly rise: number;
  /** Mean temperature rise of what rises [K], at most 900: convective heat over mass flow. */
  readonly meanRise: number;
  /** Speed on the axis [m/s]. */
  readonly speed: number;
  /** Radius to half the temperature rise [m]. */
  readonly radius: number;
  /** Radius at which the temperature rise has fallen to 1/e [m]. */
  readonly width: number;
  /** Height of the flames [m]; below it the laws are those of the flame. */
  readonly flame: number;
}

/** 0.196 (g rho^2/(cp T))^(1/3): what the handbooks print as 0.071 [kg/(s kW^(1/3) m^(5/3))]. */
export const flowFactor = (air: Air): number => plumeFlowOfAir.height.value * flowGroup(air);

/** Second term of the mass flow over convective heat: what the handbooks print as 0.00192 [kg/kJ]. */
export const flowOffset = (air: Air): number =>
  (flowFactor(air) * plumeFlowOfAir.heat.value) /
  (Math.sqrt(air.gravity) * air.specificHeat * air.density * air.temperature) ** (2 / 3);

/** 9.1 (T/(g cp^2 rho^2))^(1/3): about 25 [K m^(5/3)/kW^(2/3)]. */
export const riseFactor = (air: Air): number => rise.value * temperatureGroup(air);

/**
 * Temperature rise on the axis.
 *
 * @param convectiveHeat [kW], more than 0
 * @param aboveOrigin height above the virtual origin [m]
 * @returns [K], at most 900, which is also the answer at the origin and below it
 *
 * Source: Enclosure Fire Dynamics, eq. 4.25; NUREG-1805, eq. 9-2; limit: CFAST Technical Reference Guide.
 */
export function axisRise(convectiveHeat: number, aboveOrigin: number, air: Air = hallAir): number {
  if (aboveOrigin <= 0) return greatestRise.value;
  return Math.min(greatestRise.value, riseFactor(air) * convectiveHeat ** (2 / 3) * aboveOrigin ** (-5 / 3)); // eq. 4.25
}

/**
 * The plume of a fire at a height.
 *
 * @param fire heat, radiative share, diameter
 * @param height above the fuel [m], more than 0
 * @param air of the hall
 * @throws UsageError for a heat, diameter or height that is not more than 0
 *
 * Source: Enclosure Fire Dynamics, eq. 4.23 to 4.27, and CFAST Technical Reference Guide for speed, width and limits.
 * @example plumeAt({ heat: 1690, radiativeShare: 0.3, diameter: 1.6 }, 6).massFlow // 17.19
 */
export function plumeAt({ heat, radiativeShare, diameter }: PlumeFire, height: number, air: Air = hallAir): Plume {
  refuseUnlessAbove0('heat release rate', heat, 'kW');
  refuseUnlessShare('radiative share', radiativeShare);
  refuseUnlessAbove0('diameter', diameter, 'm');
  refuseUnlessAbove0('height', height, 'm');
  const convectiveHeat = (1 - radiativeShare) * heat;
  const flame = flameHeight(heat, diameter);
  const above = height - virtualOrigin(heat, diameter);
  const massFlow =
    height > flame && above > 0
      ? flow.height.value * convectiveHeat ** (1 / 3) * above ** (5 / 3) + flow.heat.value * convectiveHeat // eq. 4.27
      : (flameFlow.value * convectiveHeat * height) / flame; // eq. 4.27, within the flame
  const onAxis = axisRise(convectiveHeat, above, air);
  const spread = Math.sqrt((air.temperature + onAxis) / air.temperature) * Math.max(above, 0);
  const fastest = greatestSpeed.value * convectiveHeat ** 0.2;
  const group = Math.cbrt(air.gravity / (air.specificHeat * air.density * air.temperature));
  return {
    massFlow,
    rise: onAxis,
    meanRise: Math.min(greatestRise.value, convectiveHeat / (massFlow * air.specificHeat)),
    speed: above > 0 ? Math.min(fastest, speed.value * group * Math.cbrt(convectiveHeat / above)) : fastest,
    radius: plumeRadius.value * spread, // eq. 4.24
    width: width.value * spread,
    flame,
  };
}

/** Volume that a plume moves [m3/s]. */
export const volumeFlow = ({ massFlow, meanRise }: Plume, air: Air = hallAir): number =>
  massFlow / densityWarmer(air, meanRise);

/** Greatest speed on the axis over convective heat^(1/5), from the law of the speed at its limit [m/(s kW^(1/5))]. */
export function fastestFactor(air: Air): number {
  // Where the rise meets 900 K: z - z0 = (factor Qc^(2/3) / 900)^(3/5), put into the law of the speed.
  const reach = (riseFactor(air) / greatestRise.value) ** 0.6;
  return speed.value * Math.cbrt(air.gravity / (air.specificHeat * air.density * air.temperature)) * reach ** (-1 / 3);
}
