import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  decibelsToLevel,
  decibelsToPercent,
  levelToDecibels,
  levelToPercent,
  percentToDecibels,
  percentToLevel,
} from './reading.js';

const seed = 20270101;
const relative = (a: number, b: number): number => (a === b ? 0 : Math.abs(a - b) / Math.max(Math.abs(a), Math.abs(b)));

describe('readings', () => {
  it('are exact at both ends', () => {
    expect(levelToDecibels(1)).toBe(0);
    expect(levelToDecibels(0)).toBe(Number.POSITIVE_INFINITY);
    expect(decibelsToLevel(0)).toBe(1);
    expect(decibelsToLevel(Number.POSITIVE_INFINITY)).toBe(0);
    expect(percentToDecibels(0)).toBe(0);
    expect(percentToDecibels(100)).toBe(Number.POSITIVE_INFINITY);
    expect(decibelsToPercent(0)).toBe(0);
    expect(decibelsToPercent(Number.POSITIVE_INFINITY)).toBe(100);
    expect(levelToPercent(1)).toBe(0);
    expect(levelToPercent(0)).toBe(100);
    expect(percentToLevel(0)).toBe(1);
    expect(percentToLevel(100)).toBe(0);
  });

  it('give whole decades whole', () => {
    expect([90, 99].map(percentToDecibels)).toEqual([10, 20]);
    expect([10, 20, 30].map(decibelsToPercent)).toEqual([90, 99, 99.9]);
  });

  it('above clean air are losses below 0, and legal', () => {
    expect(levelToDecibels(2)).toBeCloseTo(-3.0103, 4);
    expect(percentToDecibels(-100)).toBeCloseTo(-3.0103, 4);
    expect(decibelsToPercent(-3.010299956639812)).toBeCloseTo(-100, 10);
    expect(levelToPercent(1.05)).toBeCloseTo(-5, 12);
  });

  it('below the covered reading are no light at all', () => {
    expect(levelToDecibels(-0.01)).toBe(Number.POSITIVE_INFINITY);
    expect(percentToDecibels(101)).toBe(Number.POSITIVE_INFINITY);
    expect(levelToDecibels(Number.NEGATIVE_INFINITY)).toBe(Number.POSITIVE_INFINITY);
  });

  it('that are missing stay missing', () => {
    for (const conversion of [
      decibelsToLevel,
      decibelsToPercent,
      levelToDecibels,
      levelToPercent,
      percentToDecibels,
      percentToLevel,
    ]) {
      expect(conversion(Number.NaN)).toBeNaN();
    }
  });

  it('law: percent to decibels and back, from far above clean air to 30 dB', () => {
    fc.assert(
      fc.property(fc.double({ min: -900, max: 99.9, noNaN: true }), (percent) => {
        fc.pre(Math.abs(percent) > 1e-300 || percent === 0); // below, a double itself has few digits
        expect(relative(decibelsToPercent(percentToDecibels(percent)), percent)).toBeLessThanOrEqual(1e-12);
      }),
      { seed },
    );
  });

  it('law: decibels to percent and back, thin smoke included', () => {
    fc.assert(
      fc.property(fc.double({ min: -13, max: 2, noNaN: true }), (exponent) => {
        const decibels = Math.min(10 ** exponent, 30);
        expect(relative(percentToDecibels(decibelsToPercent(decibels)), decibels)).toBeLessThanOrEqual(1e-12);
      }),
      { seed },
    );
  });

  it('law: level to decibels and back, over all that a receiver can tell', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-12, max: 10, noNaN: true }), (level) => {
        expect(relative(decibelsToLevel(levelToDecibels(level)), level)).toBeLessThanOrEqual(1e-12);
      }),
      { seed },
    );
  });

  it('law: the way by the level and the way by the percentage agree', () => {
    fc.assert(
      fc.property(fc.double({ min: 1e-3, max: 2, noNaN: true }), (level) => {
        expect(percentToDecibels(levelToPercent(level))).toBeCloseTo(levelToDecibels(level), 10);
      }),
      { seed },
    );
  });

  it('law: more loss never reads as less', () => {
    const step = fc.double({ min: 1e-9, max: 50, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: -900, max: 100, noNaN: true }), step, (percent, more) => {
        expect(percentToDecibels(percent + more)).toBeGreaterThanOrEqual(percentToDecibels(percent));
        expect(decibelsToPercent(percent + more)).toBeGreaterThanOrEqual(decibelsToPercent(percent));
        expect(decibelsToLevel(percent + more)).toBeLessThanOrEqual(decibelsToLevel(percent));
      }),
      { seed },
    );
  });
});
