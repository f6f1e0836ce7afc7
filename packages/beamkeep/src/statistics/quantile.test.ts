import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { median } from './median.js';
import { quantile } from './quantile.js';

const numbers = fc.array(fc.double({ min: -1e6, max: 1e6, noNaN: true }), { minLength: 1, maxLength: 50 });
const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('quantile', () => {
  it('numpy.quantile, method linear: of 1 and 2 at 0.25', () => expect(quantile([1, 2], 0.25)).toBe(1.25));
  it('law: the half is the median, the ends are least and greatest', () => {
    fc.assert(
      fc.property(numbers, (values) => {
        expect(quantile(values, 0.5)).toBe(median(values));
        expect(quantile(values, 0)).toBe(Math.min(...values));
        expect(quantile(values, 1)).toBe(Math.max(...values));
      }),
      { seed: 2 },
    );
  });
  it('law: never falls with the share', () => {
    fc.assert(
      fc.property(numbers, share, share, (values, a, b) => {
        const slack = 1e-9;
        expect(quantile(values, Math.min(a, b))).toBeLessThanOrEqual(quantile(values, Math.max(a, b)) + slack);
      }),
      { seed: 3 },
    );
  });
  it('leaves missing values out', () => expect(quantile([Number.NaN, 4, 2], 1)).toBe(4));
  it('nothing present gives nothing', () => expect(quantile([Number.NaN], 0.9)).toBeNaN());
  it('says what must change', () => {
    expect(() => quantile([1], 95)).toThrow('share 95 must lie from 0 to 1');
    expect(() => quantile([1], Number.NaN)).toThrow('share NaN');
  });
});
