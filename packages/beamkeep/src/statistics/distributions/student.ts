import { gammaln } from 'simple-statistics';
import { incompleteBeta } from './incompleteGamma.js';
import { normalQuantile } from './normal.js';
import { rootBetween } from './rootBetween.js';

/**
 * Share of Student's t distribution below t.
 *
 * @param t the deviation
 * @param degreesOfFreedom above 0
 * @example studentProbability(2.776, 4) // 0.975
 */
export function studentProbability(t: number, degreesOfFreedom: number): number {
  if (Number.isNaN(t)) return Number.NaN;
  const square = t * t;
  // one share of the square or the other, whichever is small, so that no digits are lost near 0 or far out
  const tail =
    square < degreesOfFreedom
      ? incompleteBeta(square / (degreesOfFreedom + square), 0.5, degreesOfFreedom / 2).above
      : incompleteBeta(degreesOfFreedom / (degreesOfFreedom + square), degreesOfFreedom / 2, 0.5).below;
  return t < 0 ? tail / 2 : 1 - tail / 2;
}

/**
 * Deviation below which a share of Student's t distribution lies.
 *
 * @param probability 0 to 1
 * @param degreesOfFreedom above 0
 * @returns minus and plus infinity at 0 and 1; NaN outside, and where there are no degrees of freedom
 *
 * Source of the values it is checked against: NIST/SEMATECH e-Handbook, upper critical values of Student's t.
 * @example studentQuantile(0.975, 4) // 2.776
 */
export function studentQuantile(probability: number, degreesOfFreedom: number): number {
  if (!(probability >= 0 && probability <= 1) || !(degreesOfFreedom > 0)) return Number.NaN;
  if (probability === 0.5) return 0;
  if (probability > 0.5) return -studentQuantile(1 - probability, degreesOfFreedom);
  const normal = normalQuantile(probability);
  if (!Number.isFinite(normal) || degreesOfFreedom === Number.POSITIVE_INFINITY) return normal;
  const excess = (t: number) => studentProbability(t, degreesOfFreedom) - probability;
  const logFactor =
    gammaln((degreesOfFreedom + 1) / 2) - gammaln(degreesOfFreedom / 2) - Math.log(degreesOfFreedom * Math.PI) / 2;
  const density = (t: number) =>
    Math.exp(logFactor - ((degreesOfFreedom + 1) / 2) * Math.log1p((t * t) / degreesOfFreedom));
  let low = 2 * normal;
  while (excess(low) > 0 && Number.isFinite(low)) low *= 4;
  return rootBetween(excess, density, low, 0, normal);
}
