import { thresholdRatio as largestRatio, reproducibilityAbove, reproducibilityBelow } from '../numbers/index.js';

/**
 * Repeatability: the ratio of the largest to the smallest threshold that one detector showed.
 *
 * @param thresholds response thresholds [dB], above 0
 * @returns the ratio, its limit of 1.6 and whether it keeps it; NaN of an empty list, which passes nothing
 *
 * Source: EN 54-7:2001, 5.2.3; the same limit in EN 54-12 (from memory).
 * @example thresholdRatio([1.9, 2.9]) // { ratio: 1.526, limit: 1.6, passes: true }
 */
export function thresholdRatio(thresholds: readonly number[]): { ratio: number; limit: number; passes: boolean } {
  const ratio = Math.max(...thresholds) / Math.min(...thresholds);
  const limit = largestRatio.value;
  return { ratio, limit, passes: ratio > 0 && ratio <= limit };
}

/**
 * Reproducibility: how far the thresholds of several detectors of one make lie from their mean.
 *
 * @param thresholds response thresholds, one a detector [dB], above 0
 * @returns mean, largest to mean, mean to smallest, their limits of 1.33 and 1.5, and whether both are kept
 *
 * Source: GB 4715-2024, 5.7; the same in EN 54-7 and EN 54-12 (from memory).
 */
export function reproducibility(thresholds: readonly number[]): {
  mean: number;
  maxToMean: number;
  meanToMin: number;
  limits: readonly [number, number];
  passes: boolean;
} {
  const mean = thresholds.reduce((sum, threshold) => sum + threshold, 0) / thresholds.length;
  const maxToMean = Math.max(...thresholds) / mean;
  const meanToMin = mean / Math.min(...thresholds);
  const limits = [reproducibilityAbove.value, reproducibilityBelow.value] as const;
  return { mean, maxToMean, meanToMin, limits, passes: maxToMean <= limits[0] && meanToMin <= limits[1] };
}
