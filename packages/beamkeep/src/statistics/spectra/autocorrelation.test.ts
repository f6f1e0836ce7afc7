import { describe, expect, it } from 'vitest';
import { autocorrelation } from './autocorrelation.js';

describe('autocorrelation', () => {
  it('by hand: 1 2 3 4', () => {
    const found = autocorrelation([1, 2, 3, 4], 2);
    expect([...found]).toEqual([1, 0.25, -0.3]);
  });
  it('leaves pairs with a missing row out', () =>
    expect(autocorrelation([1, Number.NaN, 3], 2)[2]).toBeCloseTo(-0.5, 12));
  it('values that do not vary resemble nothing', () => expect(autocorrelation([2, 2], 1)[0]).toBeNaN());
});
