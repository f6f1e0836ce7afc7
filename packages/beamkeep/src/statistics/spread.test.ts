import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { medianAbsoluteDeviation, robustSpread } from './spread.js';

const numbers = fc.array(fc.double({ min: -1e3, max: 1e3, noNaN: true }), { minLength: 1, maxLength: 40 });

describe('medianAbsoluteDeviation', () => {
  it('law: moves with a factor, not with an offset', () => {
    fc.assert(
      fc.property(numbers, fc.double({ min: -10, max: 10, noNaN: true }), (values, factor) => {
        const changed = values.map((value) => 7 + factor * value);
        expect(medianAbsoluteDeviation(changed)).toBeCloseTo(Math.abs(factor) * medianAbsoluteDeviation(values), 6);
      }),
      { seed: 4 },
    );
  });
  it('one wild value in seven does not move it', () =>
    expect(medianAbsoluteDeviation([1, 2, 3, 4, 5, 6, 1e9])).toBeCloseTo(1.482602218505602 * 2, 12));
  it('measures from a given middle', () =>
    expect(medianAbsoluteDeviation([9, 10, 11], 0)).toBeCloseTo(14.82602218505602, 12));
  it('leaves missing values out', () =>
    expect(medianAbsoluteDeviation([1, Number.NaN, 3])).toBeCloseTo(1.482602218505602, 12));
  it('nothing present gives nothing', () => expect(medianAbsoluteDeviation([])).toBeNaN());
  it('losses that are all without end do not differ', () =>
    expect(medianAbsoluteDeviation([Infinity, Infinity, 1])).toBe(0));
});

describe('robustSpread', () => {
  it('a reading that stands still keeps the spread of its rounding: step over the root of 12', () =>
    expect(robustSpread([98, 98, 98, 98, 99], 1)).toBeCloseTo(1 / Math.sqrt(12), 12));
  it('law: never below either part', () => {
    fc.assert(
      fc.property(numbers, fc.double({ min: 0.001, max: 5, noNaN: true }), (values, quantum) => {
        const spread = robustSpread(values, quantum);
        expect(spread).toBeGreaterThanOrEqual(medianAbsoluteDeviation(values) * (1 - 1e-12));
        expect(spread).toBeGreaterThanOrEqual((quantum / Math.sqrt(12)) * (1 - 1e-12));
      }),
      { seed: 5 },
    );
  });
});
