import { ceilingJet } from '../ceiling/ceilingJet.js';
import { refuseUnlessAbove0, refuseUnlessShare } from '../refuse.js';

/** A fire as an element under the ceiling meets it. */
export interface ElementFire {
  /** Heat release rate, radiation included [kW], more than 0. */
  readonly heat: number;
  /** Share of it that leaves as radiation. */
  readonly radiativeShare: number;
  /** Above the fuel [m], more than 0. */
  readonly ceiling: number;
  /** From the axis [m], 0 or more. */
  readonly radius: number;
}

/**
 * Time until an element in the ceiling jet of a steady fire has warmed by so much: how a point smoke detector is
 * sometimes reckoned, as a very quick heat detector.
 *
 * @param fire and where the element hangs
 * @param responseTimeIndex of the element [(m s)^(1/2)], more than 0
 * @param rise at which it acts [K], more than 0
 * @returns [s]; infinite where the jet is not so warm
 *
 * The jet's warmth is that of the convective heat, its speed that of the whole.
 * Temperature is a poor stand-in for smoke: such times were off by a factor of two to ten (Geiman, 2003, abstract).
 * Source: NUREG-1805, ch. 10 and 11: RTI/u^(1/2) ln(dTjet/(dTjet - dT)).
 */
export function heatElementTime(
  { heat, radiativeShare, ceiling, radius }: ElementFire,
  responseTimeIndex: number,
  rise: number,
): number {
  refuseUnlessShare('radiative share', radiativeShare);
  refuseUnlessAbove0('response time index', responseTimeIndex, '(m s)^(1/2)');
  refuseUnlessAbove0('temperature rise', rise, 'K');
  const warmth = ceilingJet((1 - radiativeShare) * heat, ceiling, radius).rise;
  if (warmth <= rise) return Number.POSITIVE_INFINITY;
  const { speed } = ceilingJet(heat, ceiling, radius);
  return (responseTimeIndex / Math.sqrt(speed)) * Math.log(warmth / (warmth - rise));
}
