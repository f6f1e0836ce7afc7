import { normalOverMad } from '../numbers/index.js';
import { type LinearFit, leastSquares, residualsOf, usableRows, weighted } from './leastSquares.js';
import { orderStatistic } from './orderStatistic.js';
import { orthogonalSolution } from './orthogonal.js';
import { copyPresent, workspace } from './present.js';

/*
 * Iteratively reweighted least squares: rows far from the fit lose their weight, the fit is made again. First with
 * Huber's weights, which find the one best fit from any start, then with Tukey's biweight, which gives a row beyond
 * `reach` spreads no say at all.
 *
 *     weight 1 |--.               Huber: falls as 1 / distance
 *              |    `.            biweight: (1 - (distance / reach)^2)^2, then 0
 *            0 |       `-------
 *              0       4.685 spreads
 *
 * Sources: Beaton and Tukey, Technometrics 16 (1974); Huber, Robust Statistics, section 7.6, for the covariance; the
 * reach 4.685 and Huber's 1.345 keep 95 % of the efficiency for normal noise (all from memory).
 */

/** A linear fit in which wild rows have no say. */
export interface RobustFit extends LinearFit {
  /** Say of each row, 0 to 1, beside its given weight; 0 where something is missing. */
  readonly trust: Float64Array;
}

/** Options of a robust fit. */
export interface RobustOptions {
  /** One a row, proportional to 1 / variance; 0 leaves a row out; all 1 when left out. */
  readonly weights?: Float64Array;
  /** Least spread of the residuals to believe in [unit of y], such as the quantum over the root of 12. */
  readonly leastSpread?: number;
  /** Distance at which a row loses its say [spreads of the residuals]; 4.685 when left out. */
  readonly reach?: number;
}

const huberReach = 1.345;
const huberRounds = 10;
const biweightRounds = 30;

/** Weight of a row at so many spreads from the fit, by Huber: none is left out. */
export const huberWeight = (distance: number) => (distance <= huberReach ? 1 : huberReach / distance);

/** Weight of a row at so many spreads from the fit, by Tukey: none beyond the reach. */
export const biweight = (distance: number, reach: number) =>
  distance < reach ? (1 - (distance / reach) ** 2) ** 2 : 0;

/**
 * The linear fit that most rows agree on: spikes, dips and steps of up to a third of the rows do not bend it.
 *
 * @param columns the terms of the model, a column of ones for the level; NaN where missing
 * @param y what is to be explained; NaN where missing
 * @returns the fit; `residualSpread` is the scaled median absolute residual, `rSquared` counts rows by their trust
 * @throws UsageError where the columns differ in length
 * @example robustLeastSquares([ones], Float64Array.of(3, 3.1, 2.9, 50), { leastSpread: 0.1 }).coefficients // 3
 */
export function robustLeastSquares(
  columns: readonly Float64Array[],
  y: Float64Array,
  { weights, leastSpread = 0, reach = 4.685 }: RobustOptions = {},
): RobustFit {
  const rows = usableRows(columns, y, weights);
  const design = columns.map((column) => weighted(column, rows, weights));
  const target = weighted(y, rows, weights);
  const plain = orthogonalSolution(
    design.map((column) => column.slice()),
    target.slice(),
  );
  const least = Math.max(leastSpread, 1e-12 * largest(target));
  const huber = reweighted(design, target, plain.coefficients, least, huberRounds, (off, spread, trust) => {
    for (let i = 0; i < trust.length; i++) trust[i] = huberWeight(Math.abs(off[i] as number) / spread);
  });
  const biweights: Weighing = (off, spread, trust) => {
    for (let i = 0; i < trust.length; i++) trust[i] = biweight(Math.abs(off[i] as number) / spread, reach);
  };
  const { coefficients, spread, trust } = reweighted(
    design,
    target,
    huber.coefficients,
    least,
    biweightRounds,
    biweights,
  );

  const off = residualsOf(design, target, coefficients);
  const inflation = covarianceFactor(off, spread, reach, plain.rank);
  const fullTrust = new Float64Array(y.length);
  const total = new Float64Array(y.length);
  rows.forEach((row, i) => {
    fullTrust[row] = trust[i] as number;
    total[row] = (trust[i] as number) * (weights?.[row] ?? 1);
  });
  return {
    coefficients,
    covariance: plain.inverseProducts.map((row) => row.map((product) => (product === 0 ? 0 : product * inflation))),
    residualSpread: spread,
    rSquared: leastSquares(columns, y, total).rSquared,
    n: rows.length,
    rank: plain.rank,
    residuals: residualsOf(columns, y, coefficients),
    trust: fullTrust,
  };
}

/** Writes the say of all rows at once: a call for each of them would cost more than the say itself. */
type Weighing = (off: Float64Array, spread: number, trust: Float64Array) => void;

/** Fits again and again with weights by distance, until nothing moves or the rounds are over. */
function reweighted(
  design: readonly Float64Array[],
  target: Float64Array,
  start: Float64Array,
  least: number,
  rounds: number,
  weigh: Weighing,
): { coefficients: Float64Array; spread: number; trust: Float64Array } {
  let coefficients = start;
  let off = residualsOf(design, target, coefficients);
  let spread = residualSpread(off, design.length, least);
  const trust = new Float64Array(off.length);
  weigh(off, spread, trust);
  for (let round = 0; round < rounds; round++) {
    coefficients = orthogonalSolution(
      design.map((column) => scaled(column, trust)),
      scaled(target, trust),
    ).coefficients;
    const before = off;
    off = residualsOf(design, target, coefficients);
    spread = residualSpread(off, design.length, least);
    weigh(off, spread, trust);
    if (largestMove(off, before) < 1e-6 * spread) break;
  }
  return { coefficients, spread, trust };
}

/** A column, each row times the root of its trust. */
function scaled(column: Float64Array, trust: Float64Array): Float64Array {
  const rows = new Float64Array(column.length);
  for (let i = 0; i < rows.length; i++) rows[i] = (column[i] as number) * Math.sqrt(trust[i] as number);
  return rows;
}

function largestMove(after: Float64Array, before: Float64Array): number {
  let most = 0;
  for (let i = 0; i < after.length; i++) most = Math.max(most, Math.abs((after[i] as number) - (before[i] as number)));
  return most;
}

/**
 * Spread of what a robust fit leaves: the scaled median of the absolute residuals, without the smallest ones that so many
 * fitted numbers can always make 0.
 *
 * @param residuals NaN where a row has none
 * @param numbers that were fitted
 * @param least to believe in
 */
export function residualSpread(residuals: Float64Array, numbers: number, least: number): number {
  const sizes = workspace(residuals.length);
  const count = copyPresent(residuals, sizes);
  if (count === 0) return least;
  for (let i = 0; i < count; i++) sizes[i] = Math.abs(sizes[i] as number);
  const left = count - 1;
  const skipped = Math.min(Math.max(numbers - 1, 0), left);
  return Math.max(normalOverMad.value * orderStatistic(sizes, 0.5 * (skipped + left), count), least);
}

const largest = (values: Float64Array) => values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);

/**
 * What to multiply the inverse products with to have the covariance of a biweight fit: Huber's first estimator,
 * [n / (n - p)] K^2 sum(psi^2) / n / (mean of psi')^2 with K = 1 + (p / n) var(psi') / (mean of psi')^2.
 */
export function covarianceFactor(residuals: Float64Array, spread: number, reach: number, rank: number): number {
  const n = residuals.length;
  if (n <= rank) return Number.NaN;
  let pull = 0;
  let slope = 0;
  let slopeSquared = 0;
  for (const residual of residuals) {
    const share = (residual / (reach * spread)) ** 2;
    if (share >= 1) continue;
    pull += (residual * (1 - share) ** 2) ** 2;
    const derivative = (1 - share) * (1 - 5 * share);
    slope += derivative;
    slopeSquared += derivative ** 2;
  }
  const meanSlope = slope / n;
  if (!(meanSlope > 0)) return Number.POSITIVE_INFINITY;
  const correction = 1 + ((rank / n) * (slopeSquared / n - meanSlope ** 2)) / meanSlope ** 2;
  // pull is 0 where every row fits exactly: then the least spread is all that is known
  const squares = Math.max(pull / (n - rank), pull === 0 ? spread ** 2 : 0);
  return (correction ** 2 * squares) / meanSlope ** 2;
}
