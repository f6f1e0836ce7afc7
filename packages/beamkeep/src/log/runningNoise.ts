import type { BucketColumns } from './bucketRows.js';

/*
 * How eventful a bucket is: how far its range and its step from the bucket before stand out of what is usual. What is
 * usual is a running median of the spreads and of the steps, moved a little up or down with each bucket, so that an
 * event does not raise it and a rougher week does after an hour or two.
 */

/** Least share by which a bucket moves the running medians. */
const leastGain = 0.02;

/** Running idea of a beam's noise. */
export class RunningNoise {
  private spread = Number.NaN;
  private step = Number.NaN;
  private last = Number.NaN;
  private buckets = 0;

  constructor(private readonly quantum: number) {}

  /** How eventful a bucket is: above 1 it is worth its samples. Buckets come in order of time, each once. */
  score(buckets: BucketColumns, slot: number): number {
    const { quantum } = this;
    const middle = buckets.middle[slot] as number;
    const range = (buckets.high[slot] as number) - (buckets.low[slot] as number);
    const spread = buckets.spread[slot] as number;
    const count = buckets.count[slot] as number;
    const step = Number.isNaN(this.last) ? 0 : Math.abs(middle - this.last);
    this.last = middle;
    let score = 0;
    if (this.buckets > 0) {
      // Of n normal deviates the range is nearly always below 2 sqrt(2 ln n) spreads.
      const usualRange = 3.2 * Math.sqrt(2 * Math.log(Math.max(count, 3))) * this.spread + 2 * quantum;
      const usualStep = 8 * this.step + this.spread + quantum;
      score = Math.max(ratio(range, usualRange), ratio(step, usualStep));
    }
    this.buckets++;
    const gain = Math.max(leastGain, 1 / this.buckets);
    const floor = quantum / Math.sqrt(12);
    this.spread = moved(this.spread, Math.max(spread, floor), gain);
    if (this.buckets > 1) this.step = moved(this.step, Math.max(step, floor / 8), gain);
    else this.step = Math.max(spread, floor);
    return score;
  }
}

const ratio = (value: number, usual: number): number => (value === 0 ? 0 : value / usual);

/** A running median moved towards a value; the first value is taken as it is. */
const moved = (median: number, value: number, gain: number): number => {
  if (Number.isNaN(median) || median === 0) return value;
  if (value > median) return Math.min(value, median * (1 + gain));
  return Math.max(value, median * (1 - gain));
};
