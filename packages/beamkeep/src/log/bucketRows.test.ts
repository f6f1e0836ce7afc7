import { describe, expect, it } from 'vitest';
import type { Trace } from '../columns/index.js';
import { BucketRows } from './bucketRows.js';

const bucketOf = (minute: number, middle: number) => ({
  time: minute * 60_000,
  until: minute * 60_000 + 59_000,
  middle,
  low: middle - 1,
  high: middle + 2,
  spread: 0.5,
  count: 60,
});
const traceOf = (rows: number): Trace => ({
  time: new Float64Array(rows),
  until: new Float64Array(rows),
  level: new Float64Array(rows),
  low: new Float32Array(rows),
  high: new Float32Array(rows),
  spread: new Float32Array(rows),
  count: new Uint32Array(rows),
});
const scale = { clean: 110, covered: 10, assumed: [] };

describe('BucketRows', () => {
  it('gives its buckets as rows of a trace, across the blocks they lie in', () => {
    const rows = new BucketRows();
    for (let minute = 0; minute < 9000; minute++) rows.push(bucketOf(minute, 60 + (minute % 10)));
    const trace = traceOf(9002);
    rows.moveInto(trace, 1, 0, 5000, scale);
    rows.moveInto(trace, 5002, 5000, 9000, scale);
    expect([trace.time[1], trace.level[1], trace.low[1], trace.high[1]]).toEqual([
      0,
      0.5,
      Math.fround(0.49),
      Math.fround(0.52),
    ]);
    expect([trace.time[5001], trace.time[5002], trace.time[9001]]).toEqual([0, 5000 * 60_000, 8999 * 60_000]);
    expect([trace.until[9001], trace.spread[9001], trace.count[9001]]).toEqual([
      8999 * 60_000 + 59_000,
      Math.fround(0.005),
      60,
    ]);
  });

  it('joins neighbours in one stretch, and leaves alone what is kept or still at hand', () => {
    const rows = new BucketRows();
    for (let minute = 0; minute < 10; minute++) rows.push(bucketOf(minute, minute));
    const { kept, fewer } = rows.join(8, 120_000, [3, 9]);
    expect(fewer).toBe(3); // 0 with 1, 4 with 5, 6 with 7; not 2 with 3, which is kept, nor 8 with 9.
    expect(kept).toEqual([2, 6]);
    const trace = traceOf(7);
    rows.moveInto(trace, 0, 0, 7, { clean: 1, covered: 0, assumed: [] });
    expect([...trace.level]).toEqual([0.5, 2, 3, 4.5, 6.5, 8, 9]);
    expect([...trace.count]).toEqual([120, 60, 60, 120, 120, 60, 60]);
    expect([trace.low[0], trace.high[0], trace.until[0]]).toEqual([-1, 3, 119_000]);
    expect(trace.spread[0]).toBeCloseTo(Math.hypot(0.5, 0.5), 6);
  });
});
