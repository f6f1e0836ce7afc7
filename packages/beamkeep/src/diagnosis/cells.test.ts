import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { weightedMedian } from './cells.js';

describe('weightedMedian', () => {
  it('law: as the median of values written out as often as they weigh', () =>
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: -20, max: 20 }), fc.integer({ min: 1, max: 9 })), { minLength: 1 }),
        (pairs) => {
          const written = pairs.flatMap(([v, w]) => Array.from({ length: w }, () => v)).sort((a, b) => a - b);
          const got = weightedMedian(
            Float64Array.from(pairs, ([v]) => v),
            Float64Array.from(pairs, ([, w]) => w),
          );
          const [a, b] = [written[(written.length - 1) >> 1], written[written.length >> 1]] as [number, number];
          expect(got === a || got === b).toBe(true);
        },
      ),
      { seed: 1 },
    ));
});
