import { gammaln } from 'simple-statistics';
import { incompleteGamma } from './incompleteGamma.js';
import { normalQuantile } from './normal.js';
import { rootBetween } from './rootBetween.js';

/**
 * Share of the chi-square distribution below x.
 *
 * @param x sum of squares, 0 or more
 * @param degreesOfFreedom above 0
 * @example chiSquareProbability(3.841, 1) // 0.95
 */
export function chiSquareProbability(x: number, degreesOfFreedom: number): number {
  if (Number.isNaN(x)) return Number.NaN;
  return incompleteGamma(degreesOfFreedom / 2, Math.max(x, 0) / 2).below;
}

/**
 * Sum of squares below which a share of the chi-square distribution lies.
 *
 * @param probability 0 to 1
 * @param degreesOfFreedom above 0
 * @returns 0 and infinity at 0 and 1; NaN outside, and where there are no degrees of freedom
 *
 * Source: start by Wilson and Hilferty's cube (from memory), then a bracketed Newton search.
 * @example chiSquareQuantile(0.95, 1) // 3.841
 */
export function chiSquareQuantile(probability: number, degreesOfFreedom: number): number {
  if (!(probability >= 0 && probability <= 1) || !(degreesOfFreedom > 0)) return Number.NaN;
  if (probability === 0) return 0;
  if (probability === 1) return Number.POSITIVE_INFINITY;
  const half = degreesOfFreedom / 2;
  const excess = (x: number) => chiSquareProbability(x, degreesOfFreedom) - probability;
  const density = (x: number) => Math.exp((half - 1) * Math.log(x / 2) - x / 2 - gammaln(half)) / 2;
  const ninth = 2 / (9 * degreesOfFreedom);
  const start = degreesOfFreedom * (1 - ninth + normalQuantile(probability) * Math.sqrt(ninth)) ** 3;
  let high = degreesOfFreedom + 10;
  while (excess(high) < 0) high *= 2;
  return rootBetween(excess, density, 0, high, start);
}
