import { BucketRows } from './bucketRows.js';
import { BucketSummary } from './bucketSummary.js';
import { KeptSamples } from './keptSamples.js';
import { RunningNoise } from './runningNoise.js';

/*
 * From rows to buckets, for all beams of a log at once. A bucket is closed by the first row behind it; whether its
 * samples are kept is known one bucket later, because those before and after an eventful one are kept with it. So the
 * rows of the last buckets stay at hand, and nothing depends on how the rows were cut into blocks.
 *
 *     rows at hand    | bucket n-2 | bucket n-1 | open bucket …
 *     settled when n-1 closes:  n-2
 */

/** Rows taken over at once. */
const rowsAtOnce = 1 << 12;
/** Room for rows at first: so many times that, so that the rows of usual buckets find room beside them. */
const timesRoom = 4;
/** Slots for closed buckets that are still of interest, used in turn. */
const slots = 3;
/** How eventful a bucket is in which a beam crosses one of its thresholds, at least. */
const crossing = 3;

/** A closed bucket, its rows still at hand. */
interface Closed {
  from: number;
  to: number;
  /** For each beam: its number among the beam's buckets, its usable rows (0: none), and how eventful it is. */
  readonly index: Int32Array;
  readonly count: Int32Array;
  readonly score: Float64Array;
}

/** What a beam brings to the condenser. */
export interface CondensedBeam {
  /** Smallest step of its readings; 0 where there is none to be told. */
  readonly step: number;
  /** Readings that matter whatever the noise: its thresholds. */
  readonly thresholds: readonly number[];
}

/** Readings of all beams, condensed. */
export class Condenser {
  /** For each beam, its buckets. */
  readonly buckets: readonly BucketRows[];
  /** The samples of eventful buckets. */
  readonly kept: KeptSamples;
  private readonly summaries: readonly BucketSummary[];
  private readonly noise: readonly RunningNoise[];
  private time: Float64Array = new Float64Array(timesRoom * rowsAtOnce);
  private columns: Float64Array[];
  private rows = 0;
  private openFrom = 0;
  private openEnd = Number.NEGATIVE_INFINITY;
  private readonly closed: readonly Closed[];
  private closedCount = 0;

  /**
   * @param bucketWidth [ms]; doubled each time there are too many buckets
   * @param mostBuckets of all beams
   * @param mostSamples of eventful buckets kept
   */
  constructor(
    private bucketWidth: number,
    private readonly beams: readonly CondensedBeam[],
    private readonly mostBuckets: number,
    mostSamples: number,
  ) {
    const width = beams.length;
    this.buckets = beams.map(() => new BucketRows());
    this.summaries = beams.map(({ step }) => new BucketSummary(step));
    this.noise = beams.map(({ step }) => new RunningNoise(step));
    this.columns = beams.map(() => new Float64Array(timesRoom * rowsAtOnce));
    this.kept = new KeptSamples(mostSamples);
    this.closed = Array.from({ length: slots }, () => ({
      from: 0,
      to: 0,
      index: new Int32Array(width),
      count: new Int32Array(width),
      score: new Float64Array(width),
    }));
  }

  /** Takes rows `from` to `to` (excluded), in order of time from call to call. */
  add(time: Float64Array, columns: readonly Float64Array[], from: number, to: number): void {
    for (let row = from; row < to; row += rowsAtOnce) this.take(time, columns, row, Math.min(to, row + rowsAtOnce));
  }

  /** Closes the last bucket and settles what is open. */
  end(): void {
    this.close(this.rows);
    this.settle(this.closedCount - 1, false);
  }

  private take(time: Float64Array, columns: readonly Float64Array[], from: number, to: number): void {
    if (this.rows + to - from > this.time.length) this.makeRoom(to - from);
    const scanFrom = this.rows;
    this.time.set(time.subarray(from, to), scanFrom);
    for (const [c, column] of this.columns.entries()) {
      column.set((columns[c] as Float64Array).subarray(from, to), scanFrom);
    }
    this.rows += to - from;
    const { time: own, rows } = this;
    for (let row = firstAt(own, scanFrom, rows, this.openEnd); row < rows; ) {
      this.close(row);
      this.openEnd = (Math.floor((own[row] as number) / this.bucketWidth) + 1) * this.bucketWidth;
      row = firstAt(own, row, rows, this.openEnd);
    }
  }

  /** Drops the rows of settled buckets, and grows where that is not enough. */
  private makeRoom(wanted: number): void {
    const settled = this.closedCount > 0 ? this.slot(this.closedCount - 1).from : this.openFrom;
    const left = this.rows - settled;
    const size = left + wanted > this.time.length / 2 ? 2 * (left + wanted) : this.time.length;
    const moved = (column: Float64Array): Float64Array => {
      if (size <= column.length) return column.copyWithin(0, settled, this.rows);
      const larger = new Float64Array(size);
      larger.set(column.subarray(settled, this.rows));
      return larger;
    };
    this.time = moved(this.time);
    this.columns = this.columns.map(moved);
    this.rows = left;
    this.openFrom -= settled;
    for (const bucket of this.closed) {
      bucket.from -= settled;
      bucket.to -= settled;
    }
  }

  private slot(bucket: number): Closed {
    return this.closed[bucket % slots] as Closed;
  }

  /** Closes the open bucket, which ends before row `to`. */
  private close(to: number): void {
    const from = this.openFrom;
    if (to === from) return;
    const closed = this.slot(this.closedCount++);
    closed.from = from;
    closed.to = to;
    this.openFrom = to;
    const { time, columns } = this;
    for (let c = 0; c < columns.length; c++) {
      const buckets = this.buckets[c] as BucketRows;
      const slot = buckets.slot();
      const summary = this.summaries[c] as BucketSummary;
      const usable = summary.summarise(time, columns[c] as Float64Array, from, to, buckets.columns, slot);
      closed.count[c] = usable;
      closed.index[c] = slot;
      closed.score[c] = 0;
      if (usable === 0) continue;
      buckets.accept();
      closed.score[c] = this.scoreOf(c, slot);
    }
    this.settle(this.closedCount - 2, true);
    if (this.buckets.reduce((sum, { length }) => sum + length, 0) > this.mostBuckets) this.widen();
  }

  /** Doubles the width of the buckets, of those that have been settled as well. */
  private widen(): void {
    this.bucketWidth *= 2;
    for (const [c, rows] of this.buckets.entries()) {
      const own = this.kept.buckets.filter(({ beam }) => beam === c);
      const atHand = this.closed.filter(({ count }) => (count[c] as number) > 0);
      const settled = Math.min(rows.length, ...atHand.map(({ index }) => index[c] as number));
      const { kept, fewer } = rows.join(
        settled,
        this.bucketWidth,
        own.map(({ bucket }) => bucket),
      );
      for (const [at, bucket] of own.entries()) bucket.bucket = kept[at] as number;
      for (const { index } of atHand) index[c] = (index[c] as number) - fewer;
    }
  }

  private scoreOf(c: number, slot: number): number {
    const { columns } = this.buckets[c] as BucketRows;
    const score = (this.noise[c] as RunningNoise).score(columns, slot);
    for (const threshold of (this.beams[c] as CondensedBeam).thresholds) {
      if ((columns.low[slot] as number) < threshold && threshold <= (columns.high[slot] as number))
        return score + crossing;
    }
    return score;
  }

  /** Keeps the samples of a closed bucket where it, the one before it or the one behind it is eventful. */
  private settle(bucket: number, next: boolean): void {
    if (bucket < 0) return;
    const { from, to, index, count, score } = this.slot(bucket);
    for (let c = 0; c < this.columns.length; c++) {
      const usable = count[c] as number;
      if (usable < 2) continue;
      let most = score[c] as number;
      if (bucket > 0) most = Math.max(most, this.slot(bucket - 1).score[c] as number);
      if (next) most = Math.max(most, this.slot(bucket + 1).score[c] as number);
      if (most <= 1) continue;
      const kept = { beam: c, bucket: index[c] as number, score: most, count: usable };
      this.kept.keep(kept, this.time, this.columns[c] as Float64Array, { from, to });
    }
  }
}

/** First row from `from` on whose time is `instant` or later, looked for in growing strides; `to` where there is none. */
function firstAt(time: Float64Array, from: number, to: number, instant: number): number {
  let low = from;
  let stride = 1;
  while (low + stride <= to && (time[low + stride - 1] as number) < instant) {
    low += stride;
    stride *= 2;
  }
  let high = Math.min(to, low + stride);
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((time[middle] as number) < instant) low = middle + 1;
    else high = middle;
  }
  return low;
}
