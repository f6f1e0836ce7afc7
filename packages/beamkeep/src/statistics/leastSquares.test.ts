import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastSquares } from './leastSquares.js';

const value = fc.double({ min: -100, max: 100, noNaN: true });
const column = fc.float64Array({ min: -100, max: 100, noNaN: true, minLength: 12, maxLength: 12 });
const ones = new Float64Array(12).fill(1);
const count = Float64Array.from({ length: 12 }, (_, i) => i);

describe('leastSquares', () => {
  it('law: what the columns explain fully comes back', () => {
    fc.assert(
      fc.property(value, value, (level, slope) => {
        const y = count.map((i) => level + slope * i);
        const { coefficients, residualSpread } = leastSquares([ones, count], y);
        expect(coefficients[0]).toBeCloseTo(level, 9);
        expect(coefficients[1]).toBeCloseTo(slope, 9);
        expect(residualSpread).toBeLessThan(1e-10);
      }),
      { seed: 11 },
    );
  });
  it('law: residuals stand square on every column', () => {
    fc.assert(
      fc.property(column, column, (x, y) => {
        const { residuals } = leastSquares([ones, x], y);
        for (const side of [ones, x]) {
          const product = residuals.reduce((sum, residual, i) => sum + residual * (side[i] as number), 0);
          expect(Math.abs(product)).toBeLessThan(1e-7);
        }
      }),
      { seed: 12 },
    );
  });
  it('law: a whole weight counts a row so many times', () => {
    fc.assert(
      fc.property(column, column, (x, y) => {
        const twice = (values: Float64Array) => Float64Array.of(...values, ...values.subarray(0, 3));
        const weights = ones.map((_, i) => (i < 3 ? 2 : 1));
        const counted = leastSquares([twice(ones), twice(x)], twice(y));
        const fit = leastSquares([ones, x], y, weights);
        fit.coefficients.forEach((coefficient, j) => {
          const scale = 1 + Math.abs(coefficient);
          expect(Math.abs(coefficient - (counted.coefficients[j] as number)) / scale).toBeLessThan(1e-6);
        });
      }),
      { seed: 13, examples: [] },
    );
  });
  it('a missing value or a weight of 0 leaves its row out, of the fit but not of the residuals', () => {
    const y = Float64Array.of(1, Number.NaN, 3, 99, 5);
    const x = Float64Array.of(0, 1, 2, 3, 4);
    const fit = leastSquares([new Float64Array(5).fill(1), x], y, Float64Array.of(1, 1, 1, 0, 1));
    expect(fit.n).toBe(3);
    expect(fit.coefficients[1]).toBeCloseTo(1, 12);
    expect(fit.residuals[1]).toBeNaN();
    expect(fit.residuals[3]).toBeCloseTo(95, 10);
  });
  it('a column that says nothing new gets 0 and an endless variance, the others keep theirs', () => {
    const y = count.map((i) => 4 + 2 * i + (i % 2));
    const fit = leastSquares([ones, count, count.map((i) => 3 - i), new Float64Array(12)], y);
    const alone = leastSquares([ones, count], y);
    expect(fit.rank).toBe(2);
    expect(fit.coefficients[1]).toBeCloseTo(alone.coefficients[1] as number, 12);
    expect([...fit.coefficients.subarray(2)]).toEqual([0, 0]);
    expect(fit.covariance[1]?.[1]).toBeCloseTo(alone.covariance[1]?.[1] as number, 12);
    expect(fit.covariance[2]?.[2]).toBe(Infinity);
  });
  it('fewer rows than columns: no spread can be told', () => {
    const fit = leastSquares([Float64Array.of(1), Float64Array.of(2)], Float64Array.of(3));
    expect(fit.rank).toBe(1);
    expect(fit.residualSpread).toBeNaN();
    expect(leastSquares([new Float64Array(0)], new Float64Array(0)).n).toBe(0);
  });
  it('says what must change', () =>
    expect(() => leastSquares([ones, count], new Float64Array(3))).toThrow(
      'columns of 12, 12 rows must be as long as y (3)',
    ));
});
