import type { Span } from './span.js';

/** One beam's samples: columns of equal length, one row a sample. */
export interface Samples {
  /** Instants [ms since 1970-01-01 UTC], strictly rising. */
  readonly time: Float64Array;
  /** Light received as a share of clean air: 1 clean, 0 none; NaN where the sample is missing. */
  readonly level: Float64Array;
}

/** A quantity logged beside the beams (temperature, humidity, gain, plant), one row a reading or a bucket's mean. */
export interface Channel {
  /** Instants [ms since 1970-01-01 UTC], strictly rising. */
  readonly time: Float64Array;
  /** The quantity in the unit of the log; never NaN: missing readings are left out. */
  readonly value: Float64Array;
}

/** The rows of a span, as views: no sample is copied. */
export const rows = ({ time, level }: Samples, { from, to }: Span): Samples => ({
  time: time.subarray(from, to),
  level: level.subarray(from, to),
});
