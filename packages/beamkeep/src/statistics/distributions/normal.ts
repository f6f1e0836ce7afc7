import { incompleteGamma } from './incompleteGamma.js';

/** Density of the standard normal distribution. */
export const normalDensity = (z: number) => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);

/**
 * Share of the standard normal distribution below z.
 *
 * @param z deviation in standard deviations
 * @returns 0 to 1; small shares keep their digits: normalProbability(-30) is 4.9e-198
 * @example normalProbability(1.96) // 0.9750
 */
export function normalProbability(z: number): number {
  if (Number.isNaN(z)) return Number.NaN;
  const { below, above } = incompleteGamma(0.5, (z * z) / 2);
  return z < 0 ? above / 2 : 0.5 + below / 2;
}

/**
 * Error function: share of the normal distribution of variance 1/2 within x of its middle, with the sign of x.
 *
 * @param x any number
 * @returns -1 to 1
 * @example errorFunction(0.5) // 0.5205
 */
export const errorFunction = (x: number) => Math.sign(x) * incompleteGamma(0.5, x * x).below;

/**
 * Deviation below which a share of the standard normal distribution lies.
 *
 * @param probability 0 to 1
 * @returns minus and plus infinity at 0 and 1; NaN outside
 *
 * Source: rational start of Abramowitz and Stegun 26.2.23 (from memory), then Halley's steps to full precision.
 * @example normalQuantile(0.975) // 1.959964
 */
export function normalQuantile(probability: number): number {
  if (!(probability >= 0 && probability <= 1)) return Number.NaN;
  if (probability > 0.5) return -normalQuantile(1 - probability);
  if (probability === 0) return Number.NEGATIVE_INFINITY;
  const t = Math.sqrt(-2 * Math.log(probability));
  const numerator = 2.515517 + t * (0.802853 + t * 0.010328);
  let z = numerator / (1 + t * (1.432788 + t * (0.189269 + t * 0.001308))) - t;
  for (let round = 0; round < 4; round++) {
    const step = (normalProbability(z) - probability) / normalDensity(z);
    z -= step / (1 + (z * step) / 2);
  }
  return z;
}
