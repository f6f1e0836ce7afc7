import type { Channel } from './samples.js';

/*
 * A trace is one beam's log, condensed: quiet minutes become one row each, minutes in which something happens keep
 * every sample. A short log keeps every sample throughout. So one table serves both the slow causes, which look at
 * hours, and the fast ones, which look at samples, and its size does not grow with the rate of sampling.
 *
 *     time    until   level  low   high  spread count
 *     06:38   06:38:59 0.972 0.969 0.975 0.0012   60     a quiet minute
 *     06:39:00 06:39:00 0.971 0.971 0.971 0        1     a minute with an edge in it: sample by sample
 *     06:39:01 06:39:01 0.402 0.402 0.402 0        1
 *
 * Always true: rows rise in time and do not overlap (time[i] <= until[i] < time[i + 1]); low <= level <= high;
 * no row is missing a value (a missing sample is no row); count adds up to the usable samples of the log.
 */

/** One beam's log, condensed. Columns of equal length, one row a sample or a quiet bucket of samples. */
export interface Trace {
  /** Instant of the row's first sample [ms since 1970-01-01 UTC]. */
  readonly time: Float64Array;
  /** Instant of the row's last sample [ms]. */
  readonly until: Float64Array;
  /** Median of the row's samples, as a share of clean air: 1 clean, 0 none; can pass 1 or fall below 0. */
  readonly level: Float64Array;
  /** Least of the row's samples, share of clean air. */
  readonly low: Float32Array;
  /** Greatest of the row's samples, share of clean air. */
  readonly high: Float32Array;
  /** Standard deviation of the row's samples about their mean (divisor n), share of clean air; 0 for one sample. */
  readonly spread: Float32Array;
  /** Number of samples in the row, 1 or more. */
  readonly count: Uint32Array;
}

/** What a log holds of one beam: its trace, what was logged beside it, and how it was sampled. */
export interface BeamRecord {
  /** The beam's `id` in the site file. */
  readonly id: string;
  readonly trace: Trace;
  /** Usual interval between samples [s]: the median of the differences. */
  readonly intervalSeconds: number;
  /**
   * Usable samples of the log, where that is not the sum of the trace's counts: what an on-change log holds is repeated
   * in its trace, so that an hour weighs what held by how long it held.
   */
  readonly logged?: number;
  /** Smallest step that the readings can show, share of clean air; 0 where it is finer than can be told. */
  readonly quantum: number;
  /** Clean-air reading that the log told, where the site does not give it [signalUnit]. */
  readonly cleanAir?: number;
  /** Near the structure [degC]. */
  readonly temperature?: Channel;
  /** Near the optics [%]. */
  readonly humidity?: Channel;
  /** The equipment's own gain, as logged. */
  readonly gain?: Channel;
  /** Whether plant runs, 0 or 1. */
  readonly plant?: Channel;
  /** What had to be assumed to read the levels, in words ("cleanAir 2131 counts, from the first good stretch"). */
  readonly assumed: readonly string[];
}
