import { type LinearFit, leastSquares } from '../leastSquares.js';

/** One harmonic of a cycle: amplitude cos(turn - phase). */
export interface Harmonic {
  /** Cycles in a period. */
  readonly order: number;
  /** [unit of the values] */
  readonly amplitude: number;
  /** Standard error of the amplitude [unit of the values]. */
  readonly amplitudeError: number;
  /** Share of the harmonic's own turn at which it is greatest [radians], counted from time 0. */
  readonly phase: number;
  /** Standard error of the phase [radians]; infinite where the amplitude is 0. */
  readonly phaseError: number;
}

/** A cycle and what it leaves. */
export interface Harmonics {
  /** Level about which the cycle swings [unit of the values]. */
  readonly mean: number;
  readonly harmonics: readonly Harmonic[];
  /** The fit itself: coefficients of 1, cos, sin, cos 2, sin 2 and so on, with their covariance. */
  readonly fit: LinearFit;
}

/**
 * Cosine and sine of each harmonic of a period, as columns for a joint fit: cos, sin, cos 2, sin 2 and so on.
 *
 * @param time instants [ms]
 * @param period [ms]
 * @param count number of harmonics
 */
export function harmonicColumns(time: ArrayLike<number>, period: number, count: number): Float64Array[] {
  const columns: Float64Array[] = [];
  for (let order = 1; order <= count; order++) {
    // the share of the turn first: an instant since 1970 keeps its digits so
    const turn = Float64Array.from(time, (t) => 2 * Math.PI * ((order * ((t % period) / period)) % 1));
    columns.push(turn.map(Math.cos), turn.map(Math.sin));
  }
  return columns;
}

/**
 * A cycle of known period in values at any instants, by least squares.
 *
 * @param time instants [ms]
 * @param values one an instant, NaN where missing (left out)
 * @param period [ms]
 * @param count number of harmonics, 1 for a plain sine
 * @param weights one a value, proportional to 1 / variance; all 1 when left out
 * @example harmonics(time, loss, day, 2).harmonics[0]?.amplitude
 */
export function harmonics(
  time: Float64Array,
  values: Float64Array,
  period: number,
  count: number,
  weights?: Float64Array,
): Harmonics {
  const ones = new Float64Array(values.length).fill(1);
  const fit = leastSquares([ones, ...harmonicColumns(time, period, count)], values, weights);
  const orders = Array.from({ length: count }, (_, k) => k + 1);
  return { mean: fit.coefficients[0] as number, harmonics: orders.map((order) => harmonicOf(fit, order)), fit };
}

/** Amplitude and phase of a harmonic and their errors, to first order. */
function harmonicOf({ coefficients, covariance }: LinearFit, order: number): Harmonic {
  const c = 2 * order - 1;
  const s = 2 * order;
  const at = (i: number, j: number) => covariance[i]?.[j] as number;
  const [cos, sin] = [coefficients[c] as number, coefficients[s] as number];
  const amplitude = Math.hypot(cos, sin);
  const [along, across] = amplitude > 0 ? [cos / amplitude, sin / amplitude] : [1, 0];
  const alongVariance = along ** 2 * at(c, c) + 2 * along * across * at(c, s) + across ** 2 * at(s, s);
  const acrossVariance = across ** 2 * at(c, c) - 2 * along * across * at(c, s) + along ** 2 * at(s, s);
  return {
    order,
    amplitude,
    amplitudeError: Math.sqrt(alongVariance),
    phase: Math.atan2(sin, cos),
    phaseError: Math.sqrt(acrossVariance) / amplitude,
  };
}
