import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { emptyBucket } from './bucketRows.js';
import { BucketSummary } from './bucketSummary.js';

/** The plain way: sort, and the textbook formulas. */
function plainly(values: readonly number[]) {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length >> 1;
  const upper = sorted[half] ?? 0;
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  return {
    middle: sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? 0) + upper) / 2,
    low: sorted[0],
    high: sorted.at(-1),
    spread: Math.sqrt(values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / values.length),
    count: values.length,
  };
}

const bucketOfSteps = fc.array(fc.oneof(fc.integer({ min: 950, max: 1010 }), fc.constant(Number.NaN)), {
  minLength: 1,
  maxLength: 60,
});
const odd = fc.array(fc.oneof(fc.integer({ min: -500, max: 5000 }), fc.double({ min: 0, max: 500, noNaN: true })), {
  minLength: 1,
  maxLength: 20,
});

describe('BucketSummary', () => {
  it('law: exact median and extremes, bucket after bucket, on the steps of a scale and off them', () =>
    fc.assert(
      fc.property(
        fc.array(fc.oneof(bucketOfSteps, bucketOfSteps, odd), { minLength: 1, maxLength: 12 }),
        fc.constantFrom(0, 0.1, 0.03),
        (buckets, step) => {
          const summary = new BucketSummary(step);
          const bucket = emptyBucket();
          for (const ticks of buckets) {
            const column = Float64Array.from(ticks, (tick) => tick / 10);
            const time = Float64Array.from(ticks, (_, at) => at * 1000);
            const usable = [...column].filter((value) => !Number.isNaN(value));
            expect(summary.summarise(time, column, 0, column.length, bucket)).toBe(usable.length);
            if (usable.length === 0) continue;
            const { spread, ...exact } = plainly(usable);
            expect(bucket).toMatchObject(exact);
            expect(Math.abs(bucket.spread - spread)).toBeLessThan(
              1e-9 * (1 + (exact.high ?? 0) - (exact.low ?? 0)) + 1e-7,
            );
            expect(bucket.time).toBe(1000 * [...column].findIndex((value) => !Number.isNaN(value)));
            expect(bucket.until).toBe(1000 * [...column].findLastIndex((value) => !Number.isNaN(value)));
          }
        },
      ),
      { seed: 6, numRuns: 300 },
    ));
});
