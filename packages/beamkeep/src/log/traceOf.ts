import type { Trace } from '../columns/index.js';
import type { BucketColumns, BucketRows } from './bucketRows.js';
import type { Condenser } from './condenser.js';
import type { KeptBucket, KeptSamples } from './keptSamples.js';
import type { Scale } from './scale.js';

/**
 * A trace that holds every sample.
 *
 * @param linear readings proportional to received power; they become the trace's levels, in place
 * @param same spreads and counts of single samples, for the traces of a log to share
 */
export function traceOfSamples(
  time: Float64Array,
  linear: Float64Array,
  { clean, covered }: Scale,
  same: SingleSamples,
): Trace {
  const level = linear;
  for (let row = 0; row < level.length; row++) level[row] = ((linear[row] as number) - covered) / (clean - covered);
  const single = Float32Array.from(level);
  return {
    time,
    until: time,
    level,
    low: single,
    high: single,
    spread: same.spread.subarray(0, level.length),
    count: same.count.subarray(0, level.length),
  };
}

/** What is the same for all traces that hold every sample: spreads of 0, counts of 1. */
export interface SingleSamples {
  readonly spread: Float32Array;
  readonly count: Uint32Array;
}

/** For traces of up to so many rows. */
export const singleSamples = (rows: number): SingleSamples => ({
  spread: new Float32Array(rows),
  count: new Uint32Array(rows).fill(1),
});

/**
 * A trace of buckets, and of the samples of eventful ones. It takes over the columns of the buckets: from the last to
 * the first, each comes to its place, which is never before the one it had.
 */
export function traceOfBuckets({ buckets, kept }: Condenser, beam: number, scale: Scale): Trace {
  const rows = buckets[beam] as BucketRows;
  const eventful = kept.buckets.filter((bucket) => bucket.beam === beam);
  const length = eventful.reduce((sum, { count }) => sum + count - 1, rows.length);
  rows.makeRoom(length);
  const { columns } = rows;
  let into = length;
  let end = rows.length;
  for (const samples of eventful.toReversed()) {
    const from = samples.bucket + 1;
    into -= end - from;
    moveBuckets(columns, into, from, end, scale);
    into -= samples.count;
    writeSamples(columns, into, kept, samples, scale);
    end = samples.bucket;
  }
  moveBuckets(columns, 0, 0, end, scale);
  const { time, until, middle, low, high, spread, count } = columns;
  return {
    time: time.subarray(0, length),
    until: until.subarray(0, length),
    level: middle.subarray(0, length),
    low: low.subarray(0, length),
    high: high.subarray(0, length),
    spread: spread.subarray(0, length),
    count: count.subarray(0, length),
  };
}

/** Moves buckets `from` to `to` (excluded) to row `into`, and makes shares of clean air of their readings. */
function moveBuckets(columns: BucketColumns, into: number, from: number, to: number, { clean, covered }: Scale): void {
  for (const column of Object.values(columns)) column.copyWithin(into, from, to);
  const { middle, low, high, spread } = columns;
  const span = clean - covered;
  for (let row = into; row < into + to - from; row++) {
    const level = ((middle[row] as number) - covered) / span;
    // Rounded to single precision, the extremes must still hold the median between them.
    middle[row] = level;
    low[row] = Math.min(level, ((low[row] as number) - covered) / span);
    high[row] = Math.max(level, ((high[row] as number) - covered) / span);
    spread[row] = (spread[row] as number) / span;
  }
}

function writeSamples(
  columns: BucketColumns,
  into: number,
  kept: KeptSamples,
  { from, count }: KeptBucket,
  { clean, covered }: Scale,
): void {
  for (let at = 0; at < count; at++) {
    const row = into + at;
    const time = kept.time[from + at] as number;
    const level = ((kept.value[from + at] as number) - covered) / (clean - covered);
    columns.time[row] = time;
    columns.until[row] = time;
    columns.middle[row] = level;
    columns.low[row] = level;
    columns.high[row] = level;
    columns.spread[row] = 0;
    columns.count[row] = 1;
  }
}
