import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chiSquareProbability, chiSquareQuantile } from './chiSquare.js';
import { normalQuantile } from './normal.js';

describe('chiSquareQuantile and chiSquareProbability', () => {
  it('scipy.stats.chi2 1.10.1', () => {
    expect(chiSquareQuantile(0.95, 10)).toBeCloseTo(18.30703805327515, 11);
    expect(chiSquareQuantile(0.05, 10)).toBeCloseTo(3.940299136119059, 12);
    expect(chiSquareQuantile(0.001, 0.1) / 1.1689264114573264e-60).toBeCloseTo(1, 9);
  });
  it('one degree of freedom: the square of a normal deviation', () => {
    expect(chiSquareQuantile(0.95, 1)).toBeCloseTo(normalQuantile(0.975) ** 2, 12);
  });
  it('two degrees of freedom: -2 ln(1 - p)', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 1 - 1e-9, noNaN: true }), (p) => {
        const exact = -2 * Math.log1p(-p);
        expect(Math.abs(chiSquareQuantile(p, 2) - exact)).toBeLessThanOrEqual(1e-6 * exact);
      }),
      { seed: 34 },
    );
  });
  it('ends, and what cannot be', () => {
    expect(chiSquareQuantile(0, 4)).toBe(0);
    expect(chiSquareQuantile(1, 4)).toBe(Infinity);
    expect(chiSquareQuantile(0.5, -1)).toBeNaN();
    expect(chiSquareProbability(Number.NaN, 4)).toBeNaN();
    expect(chiSquareProbability(-1, 4)).toBe(0);
    expect(chiSquareProbability(Infinity, 4)).toBe(1);
  });
});
