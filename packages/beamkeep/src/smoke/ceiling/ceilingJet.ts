import { ceilingJetDepth, ceilingJetRise, ceilingJetSpeed } from '../../numbers/index.js';
import { refuseUnlessAbove0, refuseUnlessFrom0 } from '../refuse.js';

/*
 * Under the ceiling the plume turns and runs outward in a thin layer, cooler and thinner in smoke the farther it goes.
 * Smooth level ceilings without draught, fires far from walls; joists, slopes and fans undo these laws. Data behind
 * them: ceilings of 4.6 to 15.5 m, out to two ceiling heights (`outOfReach` tells when a question lies outside).
 */

/** The jet under a ceiling at one distance from the axis. */
export interface CeilingJet {
  /** Greatest temperature rise in it [K]. */
  readonly rise: number;
  /** Greatest speed in it [m/s]. */
  readonly speed: number;
  /** How deep it reaches below the ceiling [m]. */
  readonly depth: number;
}

/**
 * The jet of a steady fire under a level ceiling.
 *
 * @param heat release rate, radiation included [kW], more than 0
 * @param ceiling height above the fuel [m], more than 0
 * @param radius distance from the plume's axis [m], 0 or more
 * @throws UsageError for an argument out of its range
 *
 * Source: Alpert, SFPE Handbook, ch. 14 (rise: read; speed: from memory); depth: CFAST Technical Reference Guide,
 * Ceiling Jet, for radii of 0.26 to 2 ceiling heights; nearer than that it is held.
 * @example ceilingJet(1000, 4, 3).rise // 65
 */
export function ceilingJet(heat: number, ceiling: number, radius: number): CeilingJet {
  refuseUnlessAbove0('heat release rate', heat, 'kW');
  refuseUnlessAbove0('ceiling height', ceiling, 'm');
  refuseUnlessFrom0('radius', radius, 'm');
  const far = radius / ceiling;
  return {
    rise:
      far <= ceilingJetRise.turn.value
        ? (ceilingJetRise.near.value * heat ** (2 / 3)) / ceiling ** (5 / 3)
        : (ceilingJetRise.far.value * (heat / radius) ** (2 / 3)) / ceiling,
    speed:
      far <= ceilingJetSpeed.turn.value
        ? ceilingJetSpeed.near.value * Math.cbrt(heat / ceiling)
        : (ceilingJetSpeed.far.value * Math.cbrt(heat) * Math.sqrt(ceiling)) / radius ** (5 / 6),
    depth: jetDepth(ceiling, radius),
  };
}

/** How deep the jet reaches below the ceiling [m]. */
export const jetDepth = (ceiling: number, radius: number): number =>
  ceilingJetDepth.share.value *
  ceiling *
  -Math.expm1(-ceilingJetDepth.rate.value * Math.max(radius / ceiling, ceilingJetDepth.from.value));

/**
 * Fire that warms the ceiling jet by so much: the way back from `ceilingJet`.
 *
 * @param rise temperature rise [K], more than 0
 * @param ceiling height above the fuel [m], more than 0
 * @param radius distance from the axis [m], 0 or more
 * @returns heat release rate [kW]
 * @example jetFire(100, 10, 3) // 7602
 */
export function jetFire(rise: number, ceiling: number, radius: number): number {
  refuseUnlessAbove0('temperature rise', rise, 'K');
  refuseUnlessAbove0('ceiling height', ceiling, 'm');
  refuseUnlessFrom0('radius', radius, 'm');
  return radius / ceiling <= ceilingJetRise.turn.value
    ? ((rise * ceiling ** (5 / 3)) / ceilingJetRise.near.value) ** 1.5
    : radius * ((rise * ceiling) / ceilingJetRise.far.value) ** 1.5;
}
