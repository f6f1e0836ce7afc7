import type { Span } from '../../columns/index.js';
import { roundingSpread } from '../../numbers/index.js';
import { autocorrelation, mean, standardDeviation } from '../../statistics/index.js';

/** The mean reading of a stretch, and how well it is known. */
export interface MeanReading {
  /** Samples in it. */
  readonly samples: number;
  /** [unit of the readings] */
  readonly mean: number;
  /** Standard deviation of single samples, divisor n - 1 [unit of the readings]; 0 of one sample. */
  readonly spread: number;
  /** Standard deviation of the mean, neighbours that resemble each other and rounding included [unit of the readings]. */
  readonly standardError: number;
  /** Degrees of freedom of that standard deviation. */
  readonly degreesOfFreedom: number;
}

/**
 * The mean of a stretch of readings with its standard error.
 *
 * @param readings all readings, NaN where missing (left out)
 * @param span rows of the stretch
 * @param step smallest step of the scale [unit of the readings]: where the light does not move the last digit, rounding
 *   is all that is known of it
 *
 * Samples taken faster than the light changes tell less than their number: n is cut by (1 - r) / (1 + r), r being the
 * likeness of neighbours. Source: effective size of an autoregressive series, from memory; NIST/SEMATECH e-Handbook,
 * 1.4.2.6, shows the trap.
 */
export function meanReading(readings: Float64Array, { from, to }: Span, step: number): MeanReading {
  const values = readings.subarray(from, to).filter((value) => !Number.isNaN(value));
  const samples = values.length;
  const spread = samples < 2 ? 0 : standardDeviation(values);
  const likeness = spread > 0 ? Math.min(Math.max(autocorrelation(values, 1)[1] as number, 0), 0.99) : 0;
  const independent = Math.max((samples * (1 - likeness)) / (1 + likeness), Math.min(samples, 2));
  const ofSamples = spread / Math.sqrt(independent);
  const ofRounding = roundingSpread.value * step;
  const variance = ofSamples ** 2 + ofRounding ** 2;
  // Rounding is known without a doubt, so it adds degrees of freedom (Welch and Satterthwaite, from memory).
  const degreesOfFreedom =
    ofSamples > 0 ? (Math.max(independent - 1, 1) * variance ** 2) / ofSamples ** 4 : Number.POSITIVE_INFINITY;
  return { samples, mean: mean(values), spread, standardError: Math.sqrt(variance), degreesOfFreedom };
}
