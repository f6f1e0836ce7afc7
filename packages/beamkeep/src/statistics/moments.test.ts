import { describe, expect, it } from 'vitest';
import { mean, standardDeviation } from './moments.js';

describe('mean and standardDeviation', () => {
  it('NIST StRD NumAcc1 (from memory): 10000001, 10000003, 10000002', () => {
    const values = [10000001, 10000003, 10000002];
    expect(mean(values)).toBe(10000002);
    expect(standardDeviation(values)).toBe(1);
  });
  it('leave missing values out', () => {
    expect(mean([1, Number.NaN, 3])).toBe(2);
    expect(standardDeviation([1, Number.NaN, 3])).toBeCloseTo(Math.SQRT2, 15);
  });
  it('too few values give nothing', () => {
    expect(mean([])).toBeNaN();
    expect(standardDeviation([4])).toBeNaN();
  });
  it('an infinite loss gives an infinite mean', () => expect(mean([1, Infinity])).toBe(Infinity));
});
