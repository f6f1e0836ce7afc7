import { theilSen } from 'beamkeep/statistics';
import fc from 'fast-check';
import { TheilSenRegression } from 'ml-regression';
import { describe, expect, it } from 'vitest';

/*
 * A second way to the slope: the package ml-regression 6.3.0, which lists all pairs. It takes the lower of the two
 * middle slopes, so the comparison keeps to an odd number of pairs, where there is one; and it is quadratic, so the
 * library has its own.
 */

describe('theilSen and the package ml-regression', () => {
  it('agree wherever the number of pairs is odd', () =>
    fc.assert(
      fc.property(
        fc.constantFrom(6, 7, 10, 11, 14, 15, 22, 23),
        fc.infiniteStream(fc.double({ min: -100, max: 100, noNaN: true })),
        (n, numbers) => {
          const x = Array.from({ length: n }, (_, i) => i);
          const y = x.map(() => numbers.next().value as number);
          expect(theilSen(x, y).slope).toBeCloseTo(new TheilSenRegression(x, y).slope, 10);
        },
      ),
      { seed: 7, numRuns: 300 },
    ));
});
