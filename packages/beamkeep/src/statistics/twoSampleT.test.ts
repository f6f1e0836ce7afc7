import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastSquares } from './leastSquares.js';
import { twoSampleT } from './twoSampleT.js';

const sample = fc.array(fc.integer({ min: -50, max: 50 }), { minLength: 2, maxLength: 20 });

describe('twoSampleT', () => {
  it('law: a straight fit on before (0) and after (1) has the same t', () => {
    fc.assert(
      fc.property(sample, sample, (before, after) => {
        fc.pre(new Set(before).size + new Set(after).size > 2);
        const x = Float64Array.of(...before.map(() => 0), ...after.map(() => 1));
        const fit = leastSquares([x.map(() => 1), x], Float64Array.of(...before, ...after));
        const t = (fit.coefficients[1] as number) / Math.sqrt(fit.covariance[1]?.[1] as number);
        expect(twoSampleT(before, after).t).toBeCloseTo(t, 7);
      }),
      { seed: 62 },
    );
  });
  it('leaves missing values out', () =>
    expect(twoSampleT([1, 2, Number.NaN], [3, 4])).toMatchObject({ meanBefore: 1.5, degreesOfFreedom: 2 }));
  it('too few values tell nothing', () => {
    expect(twoSampleT([1], [2]).t).toBeNaN();
    expect(twoSampleT([], [2, 3]).p).toBeNaN();
  });
});
