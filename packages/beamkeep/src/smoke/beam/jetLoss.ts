import { ceilingJetReach } from '../../numbers/index.js';
import { type Air, densityWarmer, hallAir } from '../air.js';
import { ceilingJet, jetDepth } from '../ceiling/ceilingJet.js';

/*
 * A beam through the ceiling jet. Warmth and smoke thin out together, so the smoke in a kilogram of the jet is
 *
 *     Y(r) = (smoke rate / convective heat) x cp x dT(r)
 *
 * as long as the ceiling takes no heat; where it does, there is more smoke than this. The jet's warmth is that of the
 * convective heat, as NUREG-1805, ch. 11, works it: the whole heat would make more of the smoke. The beam crosses every
 * radius from its distance to the axis out to two ceiling heights, as far as the data go, wherever the jet is deep
 * enough.
 * Source: derived from Alpert's laws; a check by the flow of the jet (2 pi r x depth x speed) agrees within a third.
 */

/** What feeds the jet. */
export interface JetFire {
  /** [kW], more than 0 */
  readonly convectiveHeat: number;
  /** [kg/s] */
  readonly smokeRate: number;
}

/**
 * Extinction coefficient of the ceiling jet at a radius.
 *
 * @param fire convective heat and smoke
 * @param ceiling height above the fuel [m], more than 0
 * @param radius from the axis [m], 0 or more
 * @param specificExtinction of the smoke at the beam's wavelength [m2/kg]
 * @returns [1/m], natural
 */
export function jetExtinction(
  { convectiveHeat, smokeRate }: JetFire,
  ceiling: number,
  radius: number,
  specificExtinction: number,
  air: Air = hallAir,
): number {
  const { rise } = ceilingJet(convectiveHeat, ceiling, radius);
  const share = (smokeRate / convectiveHeat) * air.specificHeat * rise;
  return specificExtinction * share * densityWarmer(air, rise);
}

/** Where a level beam runs under a ceiling. */
export interface JetBeam {
  /** Below the ceiling [m], 0 or more. */
  readonly below: number;
  /** Least distance between beam and axis, in plan [m], 0 or more. */
  readonly aside: number;
  /** From the point nearest to the axis to either end [m], 0 or more. */
  readonly ends: readonly [number, number];
}

/** A short piece of a beam in the jet, at one radius. */
export interface JetPiece {
  readonly radius: number;
  readonly length: number;
}

/** Pieces on each side of the point nearest to the axis, out to where the data end. */
const pieces = 64;

/**
 * The pieces of a beam that a ceiling jet reaches; a piece counts for both sides of the point nearest to the axis.
 *
 * @param ceiling height above the fuel [m], more than 0
 */
export function jetPieces(ceiling: number, { below, aside, ends }: JetBeam): JetPiece[] {
  const reach = ceilingJetReach.radius.value * ceiling;
  if (aside >= reach) return [];
  const step = Math.sqrt(reach ** 2 - aside ** 2) / pieces;
  return Array.from({ length: pieces }, (_, i) => ({
    radius: Math.hypot((i + 0.5) * step, aside),
    length: ends.reduce((sum, end) => sum + Math.min(Math.max(end - i * step, 0), step), 0),
  })).filter(({ radius, length }) => length > 0 && jetDepth(ceiling, radius) >= below);
}
