import { ceilingJetReach } from '../../numbers/index.js';
import { type Air, densityWarmer, hallAir } from '../air.js';
import { ceilingJet, jetDepth } from '../ceiling/ceilingJet.js';

/*
 * A beam through the ceiling jet. Warmth and smoke thin out together, so the smoke in a kilogram of the jet is
 *
 *     Y(r) = (smoke rate / convective heat) x cp x dT(r)
 *
 * as long as the ceiling takes no heat; where it does, there is more smoke than this. The jet's warmth is that of the
 * convective heat, as NUREG-1805, ch. 11, works it: the whole heat would make more of the smoke. The beam crosses every radius from
 * its distance to the axis out to two ceiling heights, as far as the data go, wherever the jet is deep enough.
 * Source: derived from Alpert's laws; a check by the flow of the jet (2 pi r x depth x speed) agrees within a third.
 */

/** Where a level beam runs under a ceiling. */
export interface JetBeam {
  /** Below the ceiling [m], 0 or more. */
  readonly below: number;
  /** Least distance between beam and axis, in plan [m], 0 or more. */
  readonly aside: number;
  /** From the point nearest to the axis to either end [m], 0 or more. */
  readonly ends: readonly [number, number];
}

/** What feeds the jet. */
export interface JetFire {
  /** [kW], more than 0 */
  readonly convectiveHeat: number;
  /** [kg/s] */
  readonly smokeRate: number;
}

const steps = 48;

/**
 * Optical depth of the ceiling jet on one crossing of a level beam, natural logarithm.
 *
 * @param fire convective heat and smoke
 * @param ceiling height above the fuel [m], more than 0
 * @param beam where it runs
 * @param specificExtinction of the smoke at the beam's wavelength [m2/kg]
 * @returns optical depth, 0 or more; 0 where the jet is nowhere as deep as the beam
 */
export function jetOpticalDepth(
  { convectiveHeat, smokeRate }: JetFire,
  ceiling: number,
  { below, aside, ends }: JetBeam,
  specificExtinction: number,
  air: Air = hallAir,
): number {
  const reach = ceilingJetReach.radius.value * ceiling;
  if (aside >= reach || jetDepth(ceiling, reach) < below) return 0;
  const extinction = (x: number): number => {
    const radius = Math.hypot(x, aside);
    const jet = ceilingJet(convectiveHeat, ceiling, radius);
    if (jet.depth < below) return 0;
    const share = (smokeRate / convectiveHeat) * air.specificHeat * jet.rise;
    return specificExtinction * share * densityWarmer(air, jet.rise);
  };
  const far = Math.sqrt(reach ** 2 - aside ** 2);
  return ends.reduce((sum, end) => sum + integral(extinction, Math.min(end, far)), 0);
}

/** Integral from 0 to `end` by the midpoint rule, finer near 0, where the jet is thickest. */
function integral(of: (x: number) => number, end: number): number {
  let sum = 0;
  for (let i = 0; i < steps; i++) {
    const from = end * (i / steps) ** 2;
    const to = end * ((i + 1) / steps) ** 2;
    sum += of((from + to) / 2) * (to - from);
  }
  return sum;
}
