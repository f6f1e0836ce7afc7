import type { Trace } from '../columns/index.js';
import { emptyBucket } from './bucketRows.js';
import type { Condenser } from './condenser.js';
import type { Scale } from './scale.js';

/** A trace that holds every sample. */
export function traceOfSamples(time: Float64Array, linear: Float64Array, { clean, covered }: Scale): Trace {
  const level = linear.map((reading) => (reading - covered) / (clean - covered));
  const single = Float32Array.from(level);
  return {
    time,
    until: time,
    level,
    low: single,
    high: single,
    spread: new Float32Array(level.length),
    count: new Uint32Array(level.length).fill(1),
  };
}

/** A trace of buckets, and of the samples of eventful ones; the condenser lets go of its buckets. */
export function traceOfBuckets({ buckets, kept }: Condenser, beam: number, { clean, covered }: Scale): Trace {
  const rows = buckets[beam];
  const bucketCount = rows?.length ?? 0;
  const length = bucketCount + kept.extraRows(beam);
  const span = clean - covered;
  const trace = {
    time: new Float64Array(length),
    until: new Float64Array(length),
    level: new Float64Array(length),
    low: new Float32Array(length),
    high: new Float32Array(length),
    spread: new Float32Array(length),
    count: new Uint32Array(length),
  };
  const bucket = emptyBucket();
  let row = 0;
  for (let index = 0; index < bucketCount; index++) {
    const samples = kept.of(beam, index);
    if (samples !== undefined) {
      for (let at = 0; at < samples.time.length; at++, row++) {
        const level = ((samples.value[at] as number) - covered) / span;
        trace.time[row] = samples.time[at] as number;
        trace.until[row] = samples.time[at] as number;
        trace.level[row] = level;
        trace.low[row] = level;
        trace.high[row] = level;
        trace.count[row] = 1;
      }
      continue;
    }
    rows?.read(index, bucket);
    trace.time[row] = bucket.time;
    trace.until[row] = bucket.until;
    trace.level[row] = (bucket.middle - covered) / span;
    trace.low[row] = (bucket.low - covered) / span;
    trace.high[row] = (bucket.high - covered) / span;
    trace.spread[row] = bucket.spread / span;
    trace.count[row] = bucket.count;
    row++;
  }
  rows?.clear();
  return trace;
}
