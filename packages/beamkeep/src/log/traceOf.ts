import type { Trace } from '../columns/index.js';
import type { BucketRows } from './bucketRows.js';
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

/** A trace of buckets, and of the samples of eventful ones; the condenser lets go of its buckets. */
export function traceOfBuckets({ buckets, kept }: Condenser, beam: number, scale: Scale): Trace {
  const rows = buckets[beam] as BucketRows;
  const eventful = kept.buckets.filter((bucket) => bucket.beam === beam);
  const length = eventful.reduce((sum, { count }) => sum + count - 1, rows.length);
  const trace = {
    time: new Float64Array(length),
    until: new Float64Array(length),
    level: new Float64Array(length),
    low: new Float32Array(length),
    high: new Float32Array(length),
    spread: new Float32Array(length),
    count: new Uint32Array(length),
  };
  let row = 0;
  let bucket = 0;
  for (const samples of eventful) {
    rows.moveInto(trace, row, bucket, samples.bucket, scale);
    row += samples.bucket - bucket;
    moveSamples(kept, samples, trace, row, scale);
    row += samples.count;
    bucket = samples.bucket + 1;
  }
  rows.moveInto(trace, row, bucket, rows.length, scale);
  return trace;
}

function moveSamples(kept: KeptSamples, { from, count }: KeptBucket, trace: Trace, row: number, scale: Scale): void {
  const span = scale.clean - scale.covered;
  for (let at = 0; at < count; at++) {
    const time = kept.time[from + at] as number;
    const level = ((kept.value[from + at] as number) - scale.covered) / span;
    trace.time[row + at] = time;
    trace.until[row + at] = time;
    trace.level[row + at] = level;
    trace.low[row + at] = level;
    trace.high[row + at] = level;
    trace.count[row + at] = 1;
  }
}
