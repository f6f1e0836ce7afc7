import { describe, expect, it } from 'vitest';
import { KeptSamples } from './keptSamples.js';

const time = Float64Array.from({ length: 10 }, (_, row) => row);
const values = Float64Array.from({ length: 10 }, (_, row) => (row === 3 ? Number.NaN : row * 10));
const rows = { from: 0, to: 10 };

describe('KeptSamples', () => {
  it('keeps usable samples in order', () => {
    const kept = new KeptSamples(100);
    kept.keep({ beam: 0, bucket: 7, score: 2, count: 9 }, time, values, rows);
    expect(kept.buckets).toEqual([{ beam: 0, bucket: 7, score: 2, count: 9, from: 0 }]);
    expect([...kept.time.subarray(0, 9)]).toEqual([0, 1, 2, 4, 5, 6, 7, 8, 9]);
    expect(kept.value[3]).toBe(40);
  });
  it('when there is no room the least eventful give theirs up', () => {
    const kept = new KeptSamples(40);
    for (let bucket = 0; bucket < 12; bucket++) {
      kept.keep({ beam: bucket % 2, bucket, score: (bucket * 5) % 12, count: 9 }, time, values, rows);
    }
    const used = kept.buckets.reduce((sum, { count }) => sum + count, 0);
    expect(used).toBeLessThanOrEqual(40);
    expect(kept.buckets.map(({ score }) => score).sort((a, b) => b - a)).toEqual([11, 10, 9]);
    for (const { from } of kept.buckets) expect([...kept.value.subarray(from, from + 3)]).toEqual([0, 10, 20]);
  });
  it('a bucket larger than the room is not kept', () => {
    const kept = new KeptSamples(8);
    kept.keep({ beam: 0, bucket: 0, score: 9, count: 9 }, time, values, rows);
    expect(kept.buckets).toEqual([]);
  });
});
