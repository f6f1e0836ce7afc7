import { type NonlinearFit, type NonlinearOptions, nonlinearFit, type Prediction } from './nonlinearFit.js';
import { biweight, covarianceFactor, huberWeight, residualSpread } from './robustLeastSquares.js';

/** A nonlinear fit in which wild rows have no say. */
export interface RobustNonlinearFit extends NonlinearFit {
  /** Say of each row, 0 to 1, beside its given weight; 0 where something is missing. */
  readonly trust: Float64Array;
}

/** How a robust fit is made. */
export interface RobustNonlinearOptions extends NonlinearOptions {
  /** Least spread of the residuals to believe in [unit of y]. */
  readonly leastSpread?: number;
  /** Distance at which a row loses its say [spreads of the residuals]; 4.685 when left out. */
  readonly reach?: number;
}

const huberRounds = 6;
const biweightRounds = 30;
/** Steps within a round: the weights change before the fit need come to rest. */
const stepsInRound = 3;

/**
 * The parameters with which a model comes nearest to most rows; the nonlinear kin of `robustLeastSquares`.
 *
 * @param predict the model
 * @param y one a row, NaN where missing (left out)
 * @param start first guess of the parameters
 * @returns the fit; `residualSpread` is the scaled median absolute residual
 * @throws UsageError as `nonlinearFit`
 */
export function robustNonlinearFit(
  predict: Prediction,
  y: Float64Array,
  start: readonly number[],
  { leastSpread = 0, reach = 4.685, ...options }: RobustNonlinearOptions = {},
): RobustNonlinearFit {
  const given = y.map((value, row) => (Number.isNaN(value) ? 0 : Math.max(options.weights?.[row] ?? 1, 0)));
  const scaled = (residuals: Float64Array) =>
    residuals.map((residual, row) =>
      (given[row] as number) > 0 ? residual * Math.sqrt(given[row] as number) : Number.NaN,
    );
  const most = y.reduce((greatest, value) => Math.max(greatest, Math.abs(value) || 0), 0);
  const least = Math.max(leastSpread, 1e-12 * most);
  const spreadOf = (residuals: Float64Array) => residualSpread(scaled(residuals), start.length, least);

  let fit = nonlinearFit(predict, y, start, options);
  let spread = spreadOf(fit.residuals);
  let trust = given.map(() => 1);
  for (let round = 0; round < huberRounds + biweightRounds; round++) {
    const weightAt = round < huberRounds ? huberWeight : (distance: number) => biweight(distance, reach);
    trust = scaled(fit.residuals).map((off) => (Number.isNaN(off) ? 0 : weightAt(Math.abs(off) / spread)));
    const weights = trust.map((say, row) => say * (given[row] as number));
    const before = fit;
    fit = nonlinearFit(predict, y, [...fit.parameters], { ...options, weights, mostSteps: stepsInRound });
    spread = spreadOf(fit.residuals);
    const moved = fit.residuals.reduce(
      (greatest, off, row) => Math.max(greatest, Math.abs(off - (before.residuals[row] as number)) || 0),
      0,
    );
    if (round > huberRounds && moved < 1e-6 * spread) break;
  }

  const weights = trust.map((say, row) => say * (given[row] as number));
  fit = nonlinearFit(predict, y, [...fit.parameters], { ...options, weights });
  const off = scaled(fit.residuals).filter((residual) => !Number.isNaN(residual));
  const count = off.length;
  const meanTrust = trust.reduce((sum, say) => sum + say, 0) / count;
  // the fit's covariance is inverse weighted products times its own variance: put the biweight's variance in its place
  const factor = (covarianceFactor(off, spread, reach, start.length) * meanTrust) / fit.residualSpread ** 2;
  return {
    ...fit,
    covariance: fit.covariance.map((row) => row.map((value) => (value === 0 ? 0 : value * factor))),
    residualSpread: spread,
    n: count,
    trust,
  };
}
