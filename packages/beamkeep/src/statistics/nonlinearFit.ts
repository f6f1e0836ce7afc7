import { UsageError } from '../columns/index.js';
import { orthogonalSolution } from './orthogonal.js';

/*
 * Least squares for a model that is not a sum of columns: Levenberg and Marquardt's way from a start to the nearest
 * best fit. Each step solves the linear problem of the slopes at the present parameters, with a damping that keeps it
 * short; a step that makes things worse is taken back and the damping grows.
 *
 *     slopes . step = what is left         damping large: a short step downhill
 *     damping . scale . step = 0           damping small: the full step of Gauss and Newton
 *
 * Both lines are solved together by reflections, so nothing is squared (see `orthogonal`).
 *
 * Sources: More, Lecture Notes in Mathematics 630 (1978), for scale and the stacked solution; Nielsen, report
 * IMM-REP-1999-05, for the damping (both from memory). NIST StRD certifies the digits. Own code because the package
 * ml-levenberg-marquardt never takes a bad step back: from the second start of Gauss3 it does not arrive.
 */

/** What the model gives for every row, at these parameters. */
export type Prediction = (parameters: Float64Array) => Float64Array;

/** How a fit is made. */
export interface NonlinearOptions {
  /** One a row, proportional to 1 / variance; 0 leaves a row out; all 1 when left out. */
  readonly weights?: Float64Array;
  /** Usual size of each parameter, for the steps of the slopes; that of the start when left out. */
  readonly typical?: readonly number[];
  /** Steps after which to give up; 200 when left out. */
  readonly mostSteps?: number;
}

/** A fit of a nonlinear model. */
export interface NonlinearFit {
  readonly parameters: Float64Array;
  /** Covariance of the parameters, to first order; an infinite diagonal for one that the rows say nothing about. */
  readonly covariance: readonly Float64Array[];
  /** Standard deviation of the residuals, divisor n - number of parameters that count; NaN where none is left over. */
  readonly residualSpread: number;
  /** Weighted sum of the squared residuals. */
  readonly residualSquares: number;
  /** Rows that took part. */
  readonly n: number;
  /** Whether it came to rest. */
  readonly converged: boolean;
  /** y less the prediction, one a row; NaN where something is missing. */
  readonly residuals: Float64Array;
}

/** Step of a central difference, as a share of the parameter: the cube root of the rounding of a double. */
const slopeStep = 6e-6;

/**
 * The parameters with which a model comes nearest to y.
 *
 * @param predict the model
 * @param y one a row, NaN where missing (left out)
 * @param start first guess of the parameters: the nearest best fit is found, which need not be the best of all
 * @throws UsageError where model and y differ in length, or the model has no value at the start
 * @example nonlinearFit(([a = 0, b = 0]) => x.map((t) => a * (1 - Math.exp(-b * t))), y, [500, 1e-4]).parameters
 */
export function nonlinearFit(
  predict: Prediction,
  y: Float64Array,
  start: readonly number[],
  { weights, typical = start, mostSteps = 200 }: NonlinearOptions = {},
): NonlinearFit {
  const root = y.map((value, row) => (Number.isNaN(value) ? 0 : Math.sqrt(Math.max(weights?.[row] ?? 1, 0))));
  const rows = root.reduce((count, weight) => count + (weight > 0 ? 1 : 0), 0);
  const left = (parameters: Float64Array) => {
    const predicted = predict(parameters);
    return root.map((weight, row) => (weight > 0 ? weight * ((y[row] as number) - (predicted[row] as number)) : 0));
  };
  let parameters = Float64Array.from(start);
  const length = predict(parameters).length;
  if (length !== y.length)
    throw new UsageError(`nonlinearFit: model of ${length} rows must be as long as y (${y.length})`);
  let off = left(parameters);
  let cost = squares(off);
  if (!Number.isFinite(cost))
    throw new UsageError(`nonlinearFit: the model has no value at the start (${start.join(', ')})`);

  const scale = new Float64Array(start.length);
  let damping = 1e-3;
  let growth = 2;
  let slopes = slopesAt(left, parameters, typical);
  let converged = rows === 0;
  for (let step = 0; step < mostSteps && !converged; step++) {
    for (let j = 0; j < scale.length; j++) {
      scale[j] = Math.max(scale[j] as number, Math.sqrt(squares(slopes[j] as Float64Array)));
    }
    const move = dampedStep(slopes, off, scale, damping);
    const next = parameters.map((value, j) => value + (move[j] as number));
    const nextOff = left(next);
    const nextCost = squares(nextOff);
    const small = move.every((value, j) => Math.abs(value) <= 1e-10 * (Math.abs(parameters[j] as number) + 1e-10));
    if (nextCost <= cost) {
      const expected = cost - squares(remaining(slopes, off, move));
      const gain = expected > 0 ? (cost - nextCost) / expected : 1;
      converged = small || cost - nextCost <= 1e-15 * cost;
      [parameters, off, cost] = [next, nextOff, nextCost];
      slopes = slopesAt(left, parameters, typical);
      damping = Math.max(damping * Math.max(1 / 3, 1 - (2 * gain - 1) ** 3), 1e-15);
      growth = 2;
    } else {
      // no better, and no room left to try: this is the bottom as far as doubles can see
      converged = small;
      damping *= growth;
      growth *= 2;
    }
  }

  const { inverseProducts, rank } = orthogonalSolution(slopes, new Float64Array(y.length));
  const variance = rows > rank ? cost / (rows - rank) : Number.NaN;
  const predicted = predict(parameters);
  return {
    parameters,
    covariance: inverseProducts.map((row) => row.map((product) => (product === 0 ? 0 : product * variance))),
    residualSpread: Math.sqrt(variance),
    residualSquares: cost,
    n: rows,
    converged,
    residuals: y.map((value, row) => value - (predicted[row] as number)),
  };
}

const squares = (values: Float64Array) => values.reduce((sum, value) => sum + value * value, 0);

/** Slopes of the prediction, one column a parameter, weighted as what is left. */
function slopesAt(left: Prediction, parameters: Float64Array, typical: readonly number[]): Float64Array[] {
  return Array.from(parameters, (value, j) => {
    const size = Math.max(Math.abs(value), Math.abs(typical[j] ?? 0)) || 1;
    const side = (sign: number) =>
      left(parameters.map((other, k) => (k === j ? other + sign * slopeStep * size : other)));
    const [down, up] = [side(-1), side(1)];
    return down.map((value, row) => (value - (up[row] as number)) / (2 * slopeStep * size));
  });
}

/** What the linear model leaves after a step. */
function remaining(slopes: readonly Float64Array[], off: Float64Array, move: Float64Array): Float64Array {
  const rest = off.slice();
  slopes.forEach((column, j) => {
    for (let row = 0; row < rest.length; row++) {
      rest[row] = (rest[row] as number) - (column[row] as number) * (move[j] as number);
    }
  });
  return rest;
}

/** The step that leaves least, its scaled length counted against it. */
function dampedStep(
  slopes: readonly Float64Array[],
  off: Float64Array,
  scale: Float64Array,
  damping: number,
): Float64Array {
  const stacked = slopes.map((column, j) => {
    const longer = new Float64Array(off.length + slopes.length);
    longer.set(column);
    longer[off.length + j] = Math.sqrt(damping) * (scale[j] as number);
    return longer;
  });
  const target = new Float64Array(off.length + slopes.length);
  target.set(off);
  return orthogonalSolution(stacked, target).coefficients;
}
