import { UsageError } from '../../columns/index.js';
import { fourierTransform, type Transform } from './fourier.js';

/** Power by frequency, one-sided: the negative frequencies are added to the positive ones. */
export interface Spectrum {
  /** From 0 to half the rate [unit of the rate]. */
  readonly frequency: Float64Array;
  /** [square of the values' unit over unit of the rate], or without the divisor when scaled as `spectrum`. */
  readonly power: Float64Array;
  /** Segments that were averaged. */
  readonly segments: number;
}

/** How a spectrum is taken. */
export interface WelchOptions {
  /** Samples in a segment; any number, a power of two is quickest. */
  readonly segment: number;
  /** Samples a second (or another unit of time); 1 when left out. */
  readonly rate?: number;
  /** Samples that neighbouring segments share; half a segment when left out. */
  readonly overlap?: number;
  /** `density` (default): power within a band is the sum times the spacing; `spectrum`: power of a line at its top. */
  readonly scaling?: 'density' | 'spectrum';
}

/**
 * Mean power spectrum of overlapping segments: rough noise becomes smooth, a steady line stands out.
 *
 * @param values evenly spaced samples, NaN where missing; a segment with less than half of its samples is left out
 * @throws UsageError for a segment or an overlap that cannot be
 *
 * Each segment loses its mean and is faded at both ends by a periodic Hann window. A missing sample counts as the mean,
 * and the power is scaled up by what the window lost there. Samples after the last whole segment are not used.
 * Source: Welch, IEEE Transactions on Audio and Electroacoustics 15 (1967); conventions of scipy.signal.welch.
 * @example welch(level, { segment: 256, rate: 10 })
 */
export function welch(values: ArrayLike<number>, options: WelchOptions): Spectrum {
  const { segment, rate = 1, overlap = Math.floor(segment / 2), scaling = 'density' } = options;
  if (!Number.isInteger(segment) || segment < 1) {
    throw new UsageError(`welch: segment ${segment} must be a whole number of samples, 1 or more`);
  }
  if (!Number.isInteger(overlap) || overlap < 0 || overlap >= segment) {
    throw new UsageError(
      `welch: overlap ${overlap} must be a whole number of samples, less than the segment ${segment}`,
    );
  }
  const window = Float64Array.from({ length: segment }, (_, i) => 0.5 - 0.5 * Math.cos((2 * Math.PI * i) / segment));
  return averaged(values, window, segment - overlap, rate, scaling);
}

/**
 * Power spectrum of the whole record, without fading and averaging: finest in frequency, and as rough as noise is.
 *
 * @param values evenly spaced samples, NaN where missing (counts as the mean)
 * @param rate samples a second (or another unit of time); 1 when left out
 *
 * Conventions of scipy.signal.periodogram.
 * @example periodogram(level, 10)
 */
export function periodogram(values: ArrayLike<number>, rate = 1): Spectrum {
  const window = new Float64Array(Math.max(values.length, 1)).fill(1);
  return averaged(values, window, window.length, rate, 'density');
}

/** Averages the spectra of segments that follow each other by `step`. */
function averaged(
  values: ArrayLike<number>,
  window: Float64Array,
  step: number,
  rate: number,
  scaling: 'density' | 'spectrum',
): Spectrum {
  const length = window.length;
  const transform = fourierTransform(length);
  const lines = Math.floor(length / 2) + 1;
  const power = new Float64Array(lines);
  let segments = 0;
  for (let start = 0; start + length <= values.length; start += step) {
    if (addSegment(values, start, window, transform, power, scaling === 'density' ? rate : undefined)) segments++;
  }
  for (let k = 0; k < lines; k++) {
    const sides = k === 0 || 2 * k === length ? 1 : 2;
    power[k] = segments === 0 ? Number.NaN : ((power[k] as number) * sides) / segments;
  }
  return { frequency: power.map((_, k) => (k * rate) / length), power, segments };
}

/** Adds one segment's two-sided power; tells whether enough of it was there. */
function addSegment(
  values: ArrayLike<number>,
  start: number,
  window: Float64Array,
  transform: Transform,
  power: Float64Array,
  rate: number | undefined,
): boolean {
  let count = 0;
  let sum = 0;
  let squares = 0;
  let weights = 0;
  for (let i = 0; i < window.length; i++) {
    const value = values[start + i] as number;
    if (Number.isNaN(value)) continue;
    count++;
    sum += value;
    weights += window[i] as number;
    squares += (window[i] as number) ** 2;
  }
  const scale = rate === undefined ? weights ** 2 : squares * rate;
  if (2 * count < window.length || scale === 0) return false;
  const real = new Float64Array(window.length);
  for (let i = 0; i < window.length; i++) {
    const value = values[start + i] as number;
    if (!Number.isNaN(value)) real[i] = (value - sum / count) * (window[i] as number);
  }
  const imaginary = new Float64Array(window.length);
  transform(real, imaginary);
  for (let k = 0; k < power.length; k++) {
    power[k] = (power[k] as number) + ((real[k] as number) ** 2 + (imaginary[k] as number) ** 2) / scale;
  }
  return true;
}
