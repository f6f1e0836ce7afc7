import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { studentProbability, studentQuantile } from './student.js';

describe('studentQuantile and studentProbability', () => {
  it('one degree of freedom: the tangent (Cauchy distribution)', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-9, max: 0.5, noNaN: true }), (p) => {
        const exact = -1 / Math.tan(Math.PI * p);
        expect(Math.abs(studentQuantile(p, 1) - exact)).toBeLessThanOrEqual(1e-9 * Math.max(1, Math.abs(exact)));
      }),
      { seed: 32 },
    );
  });
  it('law: each undoes the other', () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 3, noNaN: true }), fc.integer({ min: 1, max: 500 }), (t, freedom) => {
        expect(studentQuantile(studentProbability(t, freedom), freedom)).toBeCloseTo(t, 9);
      }),
      { seed: 33 },
    );
  });
  it('endless freedom is the normal distribution', () =>
    expect(studentQuantile(0.975, Infinity)).toBeCloseTo(1.959963984540054, 13));
  it('ends, and what cannot be', () => {
    expect(studentQuantile(0, 3)).toBe(-Infinity);
    expect(studentQuantile(0.5, 3)).toBe(0);
    expect(studentQuantile(2, 3)).toBeNaN();
    expect(studentQuantile(0.9, 0)).toBeNaN();
    expect(studentProbability(Number.NaN, 3)).toBeNaN();
    expect(studentProbability(Infinity, 3)).toBe(1);
  });
});
