import { UsageError } from '../../columns/index.js';
import { incompleteBeta } from './incompleteGamma.js';
import { rootBetween } from './rootBetween.js';

/**
 * Shares that a count of successes leaves possible: the exact interval of Clopper and Pearson.
 *
 * @param successes whole number, 0 to trials
 * @param trials whole number; 0 leaves everything possible
 * @param confidence 0 to 1, 0.95 when left out
 * @returns lowest and highest share, 0 to 1; covers the true share at least as often as it claims
 * @throws UsageError for counts that cannot be
 *
 * Source: Clopper and Pearson, Biometrika 26, 404-413, 1934 (from memory).
 * @example binomialInterval(10, 10) // { low: 0.692, high: 1 }
 */
export function binomialInterval(successes: number, trials: number, confidence = 0.95): { low: number; high: number } {
  if (!(Number.isInteger(successes) && Number.isInteger(trials) && successes >= 0 && successes <= trials)) {
    throw new UsageError(`binomialInterval: ${successes} of ${trials} must be whole numbers, the first not the larger`);
  }
  const tail = (1 - confidence) / 2;
  const misses = trials - successes;
  return {
    low: successes === 0 ? 0 : betaQuantile(tail, successes, misses + 1),
    high: misses === 0 ? 1 : 1 - betaQuantile(tail, misses, successes + 1),
  };
}

/** Share below which `probability` of the beta distribution lies, by halving. */
function betaQuantile(probability: number, a: number, b: number): number {
  const excess = (x: number) => incompleteBeta(x, a, b).below - probability;
  const noSlope = () => 0; // sends every step to the middle of the bracket
  return rootBetween(excess, noSlope, 0, 1, a / (a + b));
}
