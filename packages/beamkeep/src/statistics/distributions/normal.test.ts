import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { errorFunction, normalProbability, normalQuantile } from './normal.js';

describe('normalQuantile and normalProbability', () => {
  it('scipy.stats.norm 1.10.1: the deviations of usual limits, and far out', () => {
    expect(normalQuantile(0.975)).toBeCloseTo(1.959963984540054, 13);
    expect(normalQuantile(0.75)).toBeCloseTo(0.6744897501960817, 14);
    expect(normalQuantile(1e-300) / -37.0470964).toBeCloseTo(1, 8);
    expect(normalProbability(1.96)).toBeCloseTo(0.9750021048517795, 15);
    expect(normalProbability(-30) / 4.906713927148187e-198).toBeCloseTo(1, 11);
  });
  it('law: each undoes the other', () => {
    fc.assert(
      fc.property(fc.double({ min: -30, max: 6, noNaN: true }), (z) => {
        expect(normalQuantile(normalProbability(z))).toBeCloseTo(z, 6);
      }),
      { seed: 31 },
    );
  });
  it('ends, and what cannot be', () => {
    expect(normalQuantile(0)).toBe(-Infinity);
    expect(normalQuantile(1)).toBe(Infinity);
    expect(normalQuantile(1.1)).toBeNaN();
    expect(normalQuantile(Number.NaN)).toBeNaN();
    expect(normalProbability(Number.NaN)).toBeNaN();
    expect([normalProbability(-Infinity), normalProbability(0), normalProbability(Infinity)]).toEqual([0, 0.5, 1]);
  });
});

describe('errorFunction', () => {
  it('Abramowitz and Stegun, Table 7.1 (from memory): 0.5 and 1', () => {
    expect(errorFunction(0.5)).toBeCloseTo(0.5204998778, 10);
    expect(errorFunction(-1)).toBeCloseTo(-0.8427007929, 10);
  });
  it('small arguments keep their digits: 2 x over the root of pi', () =>
    expect(errorFunction(1e-9) / 1e-9).toBeCloseTo(2 / Math.sqrt(Math.PI), 12));
  it('ends and nothing', () => expect([errorFunction(Infinity), errorFunction(0)]).toEqual([1, 0]));
});
