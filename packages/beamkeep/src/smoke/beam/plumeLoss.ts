import { type Air, hallAir } from '../air.js';
import { type Plume, volumeFlow } from '../plume/heskestad.js';

/*
 * A beam across a plume. The smoke that the fire makes in a second is spread in the volume that the plume moves in a
 * second; the beam crosses twice the radius of it. Off the axis smoke falls off as the warmth does:
 *
 *     depth = specific x (smoke rate / volume flow) x 2 b x exp(-(aside/width)^2)
 *
 * An even plume is the careful choice: a Gaussian one of the same flow hides half as much again on its axis.
 * Source: derived from the plume laws and Beer-Lambert (FDS User Guide, Beam Detection Systems: parts multiply).
 */

/**
 * Optical depth of a plume on one crossing of a level beam, natural logarithm.
 *
 * @param plume at the beam's height
 * @param smokeRate smoke that the fire makes [kg/s], 0 or more
 * @param specificExtinction of the smoke at the beam's wavelength [m2/kg]
 * @param aside least distance between beam and axis [m], 0 or more
 * @returns optical depth, 0 or more; NaN where the smoke is not known
 */
export function plumeDepth(
  plume: Plume,
  smokeRate: number,
  specificExtinction: number,
  aside: number,
  air: Air = hallAir,
): number {
  if (plume.radius === 0) return 0;
  const extinction = (specificExtinction * smokeRate) / volumeFlow(plume, air);
  return extinction * 2 * plume.radius * Math.exp(-((aside / plume.width) ** 2));
}
