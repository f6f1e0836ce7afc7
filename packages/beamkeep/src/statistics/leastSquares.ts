import { UsageError } from '../columns/index.js';
import { orthogonalSolution } from './orthogonal.js';

/** A linear fit: y as a sum of columns, each with its coefficient. */
export interface LinearFit {
  /** One a column [unit of y over unit of the column]; 0 for a column that the columns before it explain already. */
  readonly coefficients: Float64Array;
  /** Covariance of the coefficients; an infinite diagonal for a column of which the rows say nothing of their own. */
  readonly covariance: readonly Float64Array[];
  /** Standard deviation of the residuals, divisor n - rank; NaN where no row is left over to tell. */
  readonly residualSpread: number;
  /** Share of the variance of y about its mean that the fit explains; NaN where y does not vary. */
  readonly rSquared: number;
  /** Rows that took part. */
  readonly n: number;
  /** Columns that count. */
  readonly rank: number;
  /** y less the fit, one a row, those of no weight included; NaN where something is missing. */
  readonly residuals: Float64Array;
}

/** Rows in which nothing is missing and the weight is above 0. */
export function usableRows(columns: readonly Float64Array[], y: Float64Array, weights?: Float64Array): Uint32Array {
  const lengths = [...columns, ...(weights ? [weights] : [])].map((column) => column.length);
  if (lengths.some((length) => length !== y.length)) {
    throw new UsageError(`least squares: columns of ${lengths.join(', ')} rows must be as long as y (${y.length})`);
  }
  const unusable = new Uint8Array(y.length);
  for (const column of [y, ...columns]) markMissing(column, unusable);
  const rows = new Uint32Array(y.length);
  let count = 0;
  for (let i = 0; i < y.length; i++) {
    if (unusable[i] === 1 || (weights !== undefined && !((weights[i] as number) > 0))) continue;
    rows[count++] = i;
  }
  return rows.subarray(0, count);
}

/** Marks the rows (1) in which a column has no value. */
function markMissing(column: Float64Array, unusable: Uint8Array): void {
  for (let i = 0; i < column.length; i++) if (Number.isNaN(column[i] as number)) unusable[i] = 1;
}

/** The chosen rows of a column, each times the root of its weight. */
export function weighted(column: Float64Array, rows: Uint32Array, weights?: Float64Array): Float64Array {
  const taken = new Float64Array(rows.length);
  for (let i = 0; i < rows.length; i++) {
    const row = rows[i] as number;
    const value = column[row] as number;
    taken[i] = weights === undefined ? value : value * Math.sqrt(weights[row] as number);
  }
  return taken;
}

/** y less the sum of the columns times their coefficients; NaN where something is missing. */
export function residualsOf(columns: readonly Float64Array[], y: Float64Array, coefficients: Float64Array) {
  const residuals = y.slice();
  columns.forEach((column, j) => {
    const coefficient = coefficients[j] as number;
    for (let i = 0; i < residuals.length; i++) {
      residuals[i] = (residuals[i] as number) - coefficient * (column[i] as number);
    }
  });
  return residuals;
}

/**
 * The coefficients with which a sum of columns comes nearest to y.
 *
 * @param columns the terms of the model, a column of ones for the level; NaN where missing
 * @param y what is to be explained; NaN where missing
 * @param weights one a row, proportional to 1 / variance; 0 leaves a row out; all 1 when left out
 * @returns the fit; rows in which anything is missing are left out
 * @throws UsageError where the columns differ in length
 *
 * By orthogonal reflections, so nearly dependent columns keep their digits. The covariance takes the rows as
 * independent: where neighbouring samples resemble each other it is too small.
 * Source: NIST Statistical Reference Datasets, linear regression, certify the digits (Norris, Filip).
 * @example leastSquares([Float64Array.of(1, 1, 1), Float64Array.of(0, 1, 2)], Float64Array.of(5, 7, 9)).coefficients // 5, 2
 */
export function leastSquares(columns: readonly Float64Array[], y: Float64Array, weights?: Float64Array): LinearFit {
  const rows = usableRows(columns, y, weights);
  const { coefficients, inverseProducts, unexplained, rank } = orthogonalSolution(
    columns.map((column) => weighted(column, rows, weights)),
    weighted(y, rows, weights),
  );
  const variance = rows.length > rank ? unexplained / (rows.length - rank) : Number.NaN;
  return {
    coefficients,
    covariance: inverseProducts.map((row) => row.map((product) => (product === 0 ? 0 : product * variance))),
    residualSpread: Math.sqrt(variance),
    rSquared: 1 - unexplained / squaresAboutMean(y, rows, weights),
    n: rows.length,
    rank,
    residuals: residualsOf(columns, y, coefficients),
  };
}

/** Weighted sum of squares about the weighted mean; NaN where y does not vary. */
function squaresAboutMean(y: Float64Array, rows: Uint32Array, weights?: Float64Array): number {
  const weight = (row: number) => (weights === undefined ? 1 : (weights[row] as number));
  let sum = 0;
  let total = 0;
  for (const row of rows) {
    sum += weight(row) * (y[row] as number);
    total += weight(row);
  }
  const middle = sum / total;
  let squares = 0;
  for (const row of rows) squares += weight(row) * ((y[row] as number) - middle) ** 2;
  return squares > 0 ? squares : Number.NaN;
}
