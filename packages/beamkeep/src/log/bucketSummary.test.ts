import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { BucketRows } from './bucketRows.js';
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
          const rows = new BucketRows();
          for (const ticks of buckets) {
            const column = Float64Array.from(ticks, (tick) => tick / 10);
            const time = Float64Array.from(ticks, (_, at) => at * 1000);
            const usable = [...column].filter((value) => !Number.isNaN(value));
            const slot = rows.slot();
            expect(summary.summarise(time, column, 0, column.length, rows.columns, slot)).toBe(usable.length);
            if (usable.length === 0) continue;
            rows.accept();
            const { spread, ...exact } = plainly(usable);
            const own = (key: keyof typeof rows.columns) => rows.columns[key][slot] ?? Number.NaN;
            expect([own('middle'), own('count')]).toEqual([exact.middle, exact.count]);
            expect([own('low'), own('high')]).toEqual([exact.low, exact.high].map((value) => Math.fround(value ?? 0)));
            expect(Math.abs(own('spread') - spread)).toBeLessThan(2e-7 * (1 + (exact.high ?? 0) - (exact.low ?? 0)));
            expect(own('time')).toBe(1000 * [...column].findIndex((value) => !Number.isNaN(value)));
            expect(own('until')).toBe(1000 * [...column].findLastIndex((value) => !Number.isNaN(value)));
          }
        },
      ),
      { seed: 6, numRuns: 300 },
    ));
});
