import { filledRangePower, overfilledRangePower } from '../numbers/index.js';

/*
 * How the received level falls with distance.
 *
 *     one way, or all light on the reflector        1 / d^2     twice as far: 6.02 dB
 *     spot larger than the reflector, and back      1 / d^4     twice as far: 12.04 dB
 */

/** Which law of distance holds. */
export type RangeRegime = 'one-way' | 'reflector-underfilled' | 'reflector-overfilled';

const powers: Record<RangeRegime, number> = {
  'one-way': filledRangePower.value,
  'reflector-underfilled': filledRangePower.value,
  'reflector-overfilled': overfilledRangePower.value,
};

/**
 * Decibels lost from a near to a far distance.
 *
 * @param nearMetres [m], above 0
 * @param farMetres [m], above 0
 * @param regime `reflector-overfilled` where the spot is larger than the reflector; for one larger than the spot the
 *   figure is the most that can be lost, near by it can be nothing
 * @returns [dB]; negative where far is nearer
 *
 * Source: derived from the inverse square and CIE S 017:2020, 17-24-103.
 * @example rangeLoss(50, 100, 'reflector-overfilled') // 12.04
 */
export const rangeLoss = (nearMetres: number, farMetres: number, regime: RangeRegime): number =>
  10 * powers[regime] * Math.log10(farMetres / nearMetres);

/**
 * Loss because the spot has outgrown the receiver, one way.
 *
 * @param distanceMetres [m]
 * @param divergenceMilliradians full angle of the beam [mrad]
 * @param diameterMetres of the receiver [m], above 0
 * @returns [dB]; 0 while the spot fits
 *
 * Source: Recommendation ITU-R P.1814 (from memory).
 * @example geometricLoss(100, 10, 0.05) // 26.02
 */
export const geometricLoss = (distanceMetres: number, divergenceMilliradians: number, diameterMetres: number): number =>
  Math.max(0, 20 * Math.log10((distanceMetres * divergenceMilliradians) / 1000 / diameterMetres));

/** Light on its way to a reflector and back. */
export interface Retroreflection {
  /** On the reflector [lx]. */
  readonly illuminanceAtReflector: number;
  /** Of the reflector towards the head [cd]. */
  readonly returnedIntensity: number;
  /** Back at the head [lx]. */
  readonly illuminanceAtReceiver: number;
}

/**
 * Light that a retroreflector smaller than the spot sends back to the head.
 *
 * @param intensity of the source towards the reflector [cd]
 * @param coefficient of retroreflection R_A [cd/(lx m2)]
 * @param areaSquareMetres of the reflector [m2]
 * @param distanceMetres [m], above 0
 *
 * Source: CIE S 017:2020, 17-24-103, with the inverse-square law twice.
 * @example retroreflection(1000, 700, 0.01, 50).illuminanceAtReceiver // 0.00112
 */
export function retroreflection(
  intensity: number,
  coefficient: number,
  areaSquareMetres: number,
  distanceMetres: number,
): Retroreflection {
  const illuminanceAtReflector = intensity / distanceMetres ** 2;
  const returnedIntensity = illuminanceAtReflector * coefficient * areaSquareMetres;
  return { illuminanceAtReflector, returnedIntensity, illuminanceAtReceiver: returnedIntensity / distanceMetres ** 2 };
}
