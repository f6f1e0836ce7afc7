import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { chanceOf } from '../../../../tests/diagnosis/kit.js';
import { growthOf } from './growth.js';

const n = 80;
const x = Float64Array.from({ length: n }, (_, i) => i);
const noisy = (law: (day: number) => number, noise = 0.02, seed = 1) =>
  x.map((t) => law(t) + noise * (chanceOf(t, seed) - 0.5));

describe('growthOf', () => {
  it('law: finds where a steady growth begins, and what it gained', () =>
    fc.assert(
      fc.property(fc.integer({ min: 8, max: 50 }), fc.double({ min: 0.02, max: 0.1, noNaN: true }), (begin, pace) => {
        const growth = growthOf(
          x,
          noisy((t) => pace * Math.max(0, t - begin)),
          0.01,
        );
        // Twenty begins are tried, 3.2 days apart.
        expect(Math.abs(growth.from - begin)).toBeLessThanOrEqual(5);
        expect(growth.gained / (pace * (n - 1 - begin))).toBeCloseTo(1, 0);
        expect(growth.explained).toBeGreaterThan(0.9);
        expect(growth.speedsUp).toBeLessThan(0);
      }),
      { seed: 1, numRuns: 25 },
    ));
  it('law: tells the square of time from a steady growth', () =>
    fc.assert(
      fc.property(fc.double({ min: 0.5, max: 3, noNaN: true }), fc.integer({ min: 1, max: 99 }), (gained, seed) => {
        const growth = growthOf(
          x,
          noisy((t) => gained * (t / (n - 1)) ** 2, 0.02, seed),
          0.01,
        );
        expect(growth.speedsUp).toBeGreaterThan(1);
        expect(growth.gained / gained).toBeCloseTo(1, 0);
      }),
      { seed: 1, numRuns: 15 },
    ));
  it('explains little of a flat course', () =>
    expect(
      growthOf(
        x,
        noisy(() => 1, 0.02),
        0.01,
      ).explained,
    ).toBeLessThan(0.5));
  it('begins at once where nothing speaks for later', () =>
    expect(
      growthOf(
        x,
        noisy((t) => 0.05 * t),
        0.01,
      ).from,
    ).toBeLessThanOrEqual(3));
});
