import { describe, expect, it } from 'vitest';
import { BucketRows } from './bucketRows.js';

/** A minute a bucket, its number for a median. */
function minutes(buckets: number): BucketRows {
  const rows = new BucketRows();
  for (let minute = 0; minute < buckets; minute++) {
    const slot = rows.slot();
    const { time, until, middle, low, high, spread, count } = rows.columns;
    time[slot] = minute * 60_000;
    until[slot] = minute * 60_000 + 59_000;
    middle[slot] = minute;
    low[slot] = minute - 1;
    high[slot] = minute + 2;
    spread[slot] = 0.5;
    count[slot] = 60;
    rows.accept();
  }
  return rows;
}

describe('BucketRows', () => {
  it('keeps its buckets when it grows; a slot that is not accepted is used again', () => {
    const rows = minutes(5000);
    expect([rows.length, rows.columns.middle[0], rows.columns.middle[4999]]).toEqual([5000, 0, 4999]);
    expect([rows.slot(), rows.slot()]).toEqual([5000, 5000]);
  });

  it('joins neighbours in one stretch, and leaves alone what is kept or still at hand', () => {
    const rows = minutes(10);
    const { kept, fewer } = rows.join(8, 120_000, [3, 9]);
    expect(fewer).toBe(3); // 0 with 1, 4 with 5, 6 with 7; not 2 with 3, which is kept, nor 8 with 9.
    expect(kept).toEqual([2, 6]);
    const { until, middle, low, high, spread, count } = rows.columns;
    expect([...middle.subarray(0, rows.length)]).toEqual([0.5, 2, 3, 4.5, 6.5, 8, 9]);
    expect([...count.subarray(0, rows.length)]).toEqual([120, 60, 60, 120, 120, 60, 60]);
    expect([low[0], high[0], until[0]]).toEqual([-1, 3, 119_000]);
    expect(spread[0]).toBeCloseTo(Math.hypot(0.5, 0.5), 6);
  });
});
