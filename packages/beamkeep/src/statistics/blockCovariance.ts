import { UsageError } from '../columns/index.js';
import type { LinearFit } from './leastSquares.js';
import { orthogonalSolution } from './orthogonal.js';
import type { RobustFit } from './robustLeastSquares.js';

/** Covariance that holds where neighbouring rows resemble each other. */
export interface BlockCovariance {
  readonly covariance: readonly Float64Array[];
  /** Independent pieces of evidence left, for Student's quantile: blocks less coefficients. */
  readonly degreesOfFreedom: number;
}

/**
 * Covariance of a fit's coefficients that lets the residuals within a block of rows resemble each other in any way.
 *
 * @param columns the terms of the fitted model
 * @param fit what `leastSquares` or `robustLeastSquares` made of them
 * @param block rows in a block: long enough that what is left of one block says little about the next, such as a day
 * @param weights what the fit was given; all 1 when left out. A robust fit brings its trust along
 * @throws UsageError for a block that is not a whole number of rows
 *
 * Take Student's quantile at `degreesOfFreedom`: with few blocks the limits are wide, as they should be.
 * Source: Liang and Zeger, Biometrika 73, 13-22, 1986 (the sandwich by clusters); Bell and McCaffrey, Survey Methodology
 * 28, 2002, for the jackknife form, which does not err on the narrow side where few blocks carry the weight (from memory).
 */
export function blockCovariance(
  columns: readonly Float64Array[],
  fit: LinearFit | RobustFit,
  block: number,
  weights?: Float64Array,
): BlockCovariance {
  if (!Number.isInteger(block) || block < 1) {
    throw new UsageError(`blockCovariance: block ${block} must be a whole number of rows, 1 or more`);
  }
  const { residuals } = fit;
  const trust = 'trust' in fit ? fit.trust : undefined;
  const weight = (row: number) => (Number.isNaN(residuals[row]) ? 0 : (weights?.[row] ?? 1) * (trust?.[row] ?? 1));
  const rooted = columns.map((column) =>
    column.map((value, row) => (weight(row) > 0 ? value * Math.sqrt(weight(row)) : 0)),
  );
  const whole = orthogonalSolution(
    rooted.map((column) => column.slice()),
    new Float64Array(residuals.length),
  );
  const known = (i: number) => Number.isFinite(whole.inverseProducts[i]?.[i]);
  const bread = whole.inverseProducts.map((line, i) => (known(i) ? line : line.map(() => 0)));
  const middle = columns.map(() => new Float64Array(columns.length));
  let blocks = 0;
  for (let start = 0; start < residuals.length; start += block) {
    const rows = Array.from({ length: Math.min(block, residuals.length - start) }, (_, i) => start + i);
    if (!rows.some((row) => weight(row) > 0)) continue;
    blocks++;
    const sum = (term: (row: number) => number) =>
      rows.reduce((total, row) => (weight(row) > 0 ? total + term(row) : total), 0);
    const pull = Float64Array.from(columns, (column) =>
      sum((row) => weight(row) * (residuals[row] as number) * (column[row] as number)),
    );
    const own = rooted.map((a) =>
      Float64Array.from(rooted, (b) => sum((row) => (a[row] as number) * (b[row] as number))),
    );
    const freed = withoutOwnShare(pull, own, bread);
    middle.forEach((line, i) => {
      for (let j = 0; j < line.length; j++) line[j] = (line[j] as number) + (freed[i] as number) * (freed[j] as number);
    });
  }
  const degreesOfFreedom = Math.max(blocks - fit.rank, 0);
  const factor = degreesOfFreedom > 0 ? ((blocks - 1) / blocks) * yielding(trust) : Number.NaN;
  const covariance = product(product(bread, middle), bread).map((line, i) =>
    line.map((value, j) => (i === j && !known(i) ? Number.POSITIVE_INFINITY : value * factor)),
  );
  return { covariance, degreesOfFreedom };
}

/**
 * A block's pull on the coefficients as it would be had the block not drawn the fit towards itself:
 * (I - own bread)^-1 pull, which makes the whole the jackknife over blocks.
 */
function withoutOwnShare(pull: Float64Array, own: Float64Array[], bread: Float64Array[]): Float64Array {
  const share = product(own, bread);
  const columns = pull.map((_, j) => j);
  const left = Array.from(columns, (j) => pull.map((_, i) => (i === j ? 1 : 0) - (share[i]?.[j] as number)));
  return orthogonalSolution(left, pull.slice()).coefficients;
}

/**
 * A row of a biweight fit pulls less the further it is off, so the fit gives way more than its weights say: the square
 * of mean weight over mean slope of the pull. With weight w = (1 - u)^2 the slope is (1 - u)(1 - 5 u).
 */
function yielding(trust: Float64Array | undefined): number {
  if (trust === undefined) return 1;
  let weight = 0;
  let slope = 0;
  for (const w of trust) {
    weight += w;
    slope += Math.sqrt(w) * (5 * Math.sqrt(w) - 4);
  }
  return slope > 0 ? (weight / slope) ** 2 : Number.POSITIVE_INFINITY;
}

/** Product of two square matrices. */
function product(a: readonly Float64Array[], b: readonly Float64Array[]): Float64Array[] {
  return a.map((line) =>
    line.map((_, j) => line.reduce((sum, value, k) => sum + value * ((b[k] as Float64Array)[j] as number), 0)),
  );
}
