/*
 * Least squares by Householder reflections. Each reflection turns one column onto a coordinate axis and leaves lengths
 * as they are, so the squares are never formed: a polynomial of degree ten keeps seven digits (NIST Filip) where the
 * normal equations keep none.
 *
 *     | x x x |     | r r r |
 *     | x x x |  -> |   r r |   and the same turns applied to y: its first rows give the coefficients,
 *     | x x x |     |     r |   the rest is what no combination of the columns can explain.
 *     | x x x |     |       |
 *
 * A column that the columns before it already explain is left out: nothing can be said about its coefficient.
 *
 * Source: Golub and Van Loan, Matrix Computations, chapter "Orthogonalization and Least Squares" (from memory).
 */

/** What the reflections leave. */
export interface Orthogonal {
  /** One a column; 0 for a column left out. */
  readonly coefficients: Float64Array;
  /** Inverse of the matrix of products of the columns; an infinite diagonal for a column left out. */
  readonly inverseProducts: Float64Array[];
  /** Sum of the squares of y that the columns do not explain. */
  readonly unexplained: number;
  /** Number of columns that count. */
  readonly rank: number;
}

/** A column whose share beyond the columns before it is less than this is rounding, no direction of its own. */
const smallestShare = 1e-13;

/**
 * Solves the least-squares problem; overwrites what it is given.
 *
 * @param columns equally long, without NaN
 * @param y as long as the columns, without NaN
 */
export function orthogonalSolution(columns: readonly Float64Array[], y: Float64Array): Orthogonal {
  const kept = triangle(columns, y);
  const rank = kept.length;
  const inverse = invertedTriangle(columns, kept);
  const coefficients = new Float64Array(columns.length);
  const inverseProducts = columns.map(() => new Float64Array(columns.length));
  columns.forEach((_, i) => {
    const row = inverseProducts[i] as Float64Array;
    const a = kept.indexOf(i);
    if (a < 0) {
      row[i] = Number.POSITIVE_INFINITY;
      return;
    }
    const left = inverse[a] as Float64Array;
    for (let k = a; k < rank; k++) {
      coefficients[i] = (coefficients[i] as number) + (left[k] as number) * (y[k] as number);
    }
    kept.forEach((j, b) => {
      const right = inverse[b] as Float64Array;
      let product = 0;
      for (let k = Math.max(a, b); k < rank; k++) product += (left[k] as number) * (right[k] as number);
      row[j] = product;
    });
  });
  let unexplained = 0;
  for (let i = rank; i < y.length; i++) unexplained += (y[i] as number) ** 2;
  return { coefficients, inverseProducts, unexplained, rank };
}

/** Reflects the columns to a triangle, and y with them; tells which columns count, in order. */
function triangle(columns: readonly Float64Array[], y: Float64Array): number[] {
  const lengths = columns.map((column) => length(column, 0));
  const kept: number[] = [];
  columns.forEach((column, j) => {
    const top = kept.length;
    const rest = length(column, top);
    if (top >= y.length || !(rest > smallestShare * (lengths[j] as number))) return;
    const pivot = column[top] as number;
    const corner = pivot > 0 ? -rest : rest; // the sign that adds: no digits cancel
    const mirror = column.slice(top);
    mirror[0] = pivot - corner;
    const half = rest * (rest + Math.abs(pivot)); // half the squared length of the mirror's normal
    for (let k = j + 1; k < columns.length; k++) reflect(columns[k] as Float64Array, mirror, top, half);
    reflect(y, mirror, top, half);
    column[top] = corner;
    kept.push(j);
  });
  return kept;
}

/** Mirrors the rows of a column from `top` on. */
function reflect(column: Float64Array, mirror: Float64Array, top: number, half: number): void {
  let product = 0;
  for (let i = 0; i < mirror.length; i++) product += (mirror[i] as number) * (column[top + i] as number);
  const factor = product / half;
  for (let i = 0; i < mirror.length; i++) {
    column[top + i] = (column[top + i] as number) - factor * (mirror[i] as number);
  }
}

/** Length of a column's rows from `top` on. */
function length(column: Float64Array, top: number): number {
  let squares = 0;
  for (let i = top; i < column.length; i++) squares += (column[i] as number) ** 2;
  return Math.sqrt(squares);
}

/** Inverse of the triangle, row by row; the columns beyond the diagonal only. */
function invertedTriangle(columns: readonly Float64Array[], kept: readonly number[]): Float64Array[] {
  const entry = (row: number, column: number) => (columns[kept[column] as number] as Float64Array)[row] as number;
  const inverse = kept.map(() => new Float64Array(kept.length));
  for (let j = 0; j < kept.length; j++) {
    for (let i = j; i >= 0; i--) {
      let sum = i === j ? 1 : 0;
      for (let k = i + 1; k <= j; k++) sum -= entry(i, k) * ((inverse[k] as Float64Array)[j] as number);
      (inverse[i] as Float64Array)[j] = sum / entry(i, i);
    }
  }
  return inverse;
}
