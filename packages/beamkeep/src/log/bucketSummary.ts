import type { BucketColumns } from './bucketRows.js';
import { middle } from './middle.js';

/*
 * What one bucket of one beam's readings comes to. Readings stand on a scale of steps, and those of a quiet minute on
 * few of them: so they are counted by step, and median, extremes and spread are taken from the counts. Where readings
 * stand between the steps, or too far apart, they are looked at one by one, with the same median and extremes.
 */

/** Steps that are counted. */
const stepsCounted = 256;
/** Where the last median comes to stand among them. */
const centre = stepsCounted / 2;
/** Steps between the last median and the edge below which the counts are centred anew. */
const edge = stepsCounted / 8;

/** Summarises the buckets of one beam, one after the other. */
export class BucketSummary {
  private readonly counts = new Int32Array(stepsCounted);
  /** The reading that stands for each step; NaN where none has been met. */
  private readonly readings = new Float64Array(stepsCounted).fill(Number.NaN);
  private origin = Number.NaN;
  private work: Float64Array = new Float64Array(256);

  /** @param step smallest step of the readings; 0 where there is none to be told */
  constructor(private readonly step: number) {}

  /**
   * Summarises rows of a column into a slot of a beam's buckets.
   *
   * @returns the number of usable rows; where it is 0 the slot is left as it was
   */
  summarise(
    time: Float64Array,
    column: Float64Array,
    from: number,
    to: number,
    into: BucketColumns,
    slot: number,
  ): number {
    let first = from;
    while (first < to && Number.isNaN(column[first] as number)) first++;
    if (first === to) return 0;
    let last = to - 1;
    while (Number.isNaN(column[last] as number)) last--;
    into.time[slot] = time[first] as number;
    into.until[slot] = time[last] as number;
    if (this.step > 0) {
      if (Number.isNaN(this.origin)) this.centreOn(column[first] as number);
      if (this.byStep(column, first, last + 1, into, slot)) return into.count[slot] as number;
    }
    this.oneByOne(column, first, last + 1, into, slot);
    if (this.step > 0) this.centreOn(into.middle[slot] as number);
    return into.count[slot] as number;
  }

  private centreOn(reading: number): void {
    this.origin = reading - centre * this.step;
    this.readings.fill(Number.NaN);
  }

  /** By counts; false where a reading stands outside them or between two steps. */
  private byStep(column: Float64Array, from: number, to: number, into: BucketColumns, slot: number): boolean {
    const { counts, readings, origin } = this;
    const perStep = 1 / this.step;
    let low = stepsCounted;
    let high = 0;
    let row = from;
    for (; row < to; row++) {
      const reading = column[row] as number;
      const at = ((reading - origin) * perStep + 0.5) | 0; // 0 of NaN
      if (at <= 0 || at >= stepsCounted) {
        if (Number.isNaN(reading)) continue;
        break;
      }
      if (readings[at] !== reading) {
        if (counts[at] !== 0) break;
        readings[at] = reading;
      }
      if (at < low) low = at;
      if (at > high) high = at;
      counts[at] = (counts[at] as number) + 1;
    }
    if (row < to) {
      counts.fill(0);
      return false;
    }
    let count = 0;
    let sum = 0;
    let squares = 0;
    const base = readings[low] as number;
    for (let at = low; at <= high; at++) {
      const times = counts[at] as number;
      if (times === 0) continue;
      const off = (readings[at] as number) - base;
      count += times;
      sum += times * off;
      squares += times * off * off;
    }
    const lower = (count - 1) >> 1;
    let at = low;
    let below = counts[at] as number;
    while (below <= lower) below += counts[++at] as number;
    let median = readings[at] as number;
    if ((count & 1) === 0 && below === lower + 1) {
      let next = at + 1;
      while (counts[next] === 0) next++;
      median = (median + (readings[next] as number)) / 2;
    }
    into.count[slot] = count;
    into.middle[slot] = median;
    into.low[slot] = base;
    into.high[slot] = readings[high] as number;
    into.spread[slot] = spreadOf(count, sum, squares);
    counts.fill(0, low, high + 1);
    if (at < edge || at >= stepsCounted - edge) this.centreOn(median);
    return true;
  }

  private oneByOne(column: Float64Array, from: number, to: number, into: BucketColumns, slot: number): void {
    if (to - from > this.work.length) this.work = new Float64Array(2 * (to - from));
    const { work } = this;
    const base = column[from] as number;
    let count = 0;
    let low = base;
    let high = base;
    let sum = 0;
    let squares = 0;
    for (let row = from; row < to; row++) {
      const reading = column[row] as number;
      if (Number.isNaN(reading)) continue;
      work[count++] = reading;
      if (reading < low) low = reading;
      if (reading > high) high = reading;
      const off = reading - base;
      sum += off;
      squares += off * off;
    }
    into.count[slot] = count;
    into.middle[slot] = middle(work, count);
    into.low[slot] = low;
    into.high[slot] = high;
    into.spread[slot] = low === high ? 0 : spreadOf(count, sum, squares);
  }
}

/** Standard deviation with divisor n, from sums over differences from one of the readings. */
const spreadOf = (count: number, sum: number, squares: number): number =>
  Math.sqrt(Math.max(0, squares / count - (sum / count) ** 2));
