import { type Bucket, BucketRows, emptyBucket } from './bucketRows.js';
import { KeptSamples } from './keptSamples.js';
import { middle } from './middle.js';
import { RunningNoise } from './runningNoise.js';

/*
 * From rows to buckets, for all beams of a log at once. A bucket is closed by the first row behind it; whether its
 * samples are kept is known one bucket later, because those before and after an eventful one are kept with it. So
 * the rows of the last buckets stay at hand, and nothing depends on how the rows were cut into blocks.
 */

/** A closed bucket, its rows still at hand. */
interface Closed {
  from: number;
  to: number;
  /** For each beam: its number among the beam's buckets, or less than 0 where the beam has no value in it. */
  readonly index: Int32Array;
  readonly score: Float64Array;
}

/** Readings of all beams, condensed. */
export class Condenser {
  readonly buckets: readonly BucketRows[];
  readonly kept: KeptSamples;
  private readonly noise: readonly RunningNoise[];
  private readonly bucket: Bucket = emptyBucket();
  private time: Float64Array = new Float64Array(1 << 12);
  private columns: Float64Array[];
  private work = new Float64Array(1 << 12);
  private rows = 0;
  private openFrom = 0;
  private openEnd = Number.NEGATIVE_INFINITY;
  private closed: Closed[] = [];

  /**
   * @param bucketWidth [ms]
   * @param quanta smallest step of each beam's readings
   * @param levels for each beam, readings that matter whatever the noise (its thresholds)
   * @param room most samples kept
   */
  constructor(
    private readonly bucketWidth: number,
    quanta: readonly number[],
    private readonly levels: readonly (readonly number[])[],
    room: number,
  ) {
    this.buckets = quanta.map(() => new BucketRows());
    this.noise = quanta.map((quantum) => new RunningNoise(quantum));
    this.columns = quanta.map(() => new Float64Array(1 << 12));
    this.kept = new KeptSamples(quanta.length, room);
  }

  /** Takes rows, in order of time from call to call. */
  add(time: Float64Array, columns: readonly Float64Array[], count: number): void {
    for (let from = 0; from < count; ) {
      if ((time[from] as number) >= this.openEnd) {
        this.close();
        this.openEnd = (Math.floor((time[from] as number) / this.bucketWidth) + 1) * this.bucketWidth;
      }
      let to = from + 1;
      while (to < count && (time[to] as number) < this.openEnd) to++;
      this.append(time, columns, from, to);
      from = to;
    }
  }

  /** Closes the last bucket and settles what is open. */
  end(): void {
    this.close();
    this.decide(this.closed.length - 1);
  }

  private append(time: Float64Array, columns: readonly Float64Array[], from: number, to: number): void {
    const rows = this.rows + to - from;
    if (rows > this.time.length) this.makeRoom(to - from);
    this.time.set(time.subarray(from, to), this.rows);
    for (const [c, column] of this.columns.entries()) {
      column.set((columns[c] as Float64Array).subarray(from, to), this.rows);
    }
    this.rows += to - from;
  }

  /** Drops the rows of settled buckets, and grows where that is not enough. */
  private makeRoom(wanted: number): void {
    const settled = this.closed[0]?.from ?? this.openFrom;
    const left = this.rows - settled;
    const size =
      left + wanted > this.time.length / 2 ? 2 ** Math.ceil(Math.log2(2 * (left + wanted))) : this.time.length;
    const moved = (column: Float64Array): Float64Array => {
      if (size === column.length) return column.copyWithin(0, settled, this.rows);
      const larger = new Float64Array(size);
      larger.set(column.subarray(settled, this.rows));
      return larger;
    };
    this.time = moved(this.time);
    this.columns = this.columns.map(moved);
    if (size > this.work.length) this.work = new Float64Array(size);
    this.rows = left;
    this.openFrom -= settled;
    for (const bucket of this.closed) {
      bucket.from -= settled;
      bucket.to -= settled;
    }
  }

  private close(): void {
    const { rows, openFrom, columns } = this;
    if (rows === openFrom) return;
    const closed: Closed = {
      from: openFrom,
      to: rows,
      index: new Int32Array(columns.length).fill(-1),
      score: new Float64Array(columns.length),
    };
    for (let c = 0; c < columns.length; c++) this.summarise(c, closed);
    this.closed.push(closed);
    this.openFrom = rows;
    this.decide(this.closed.length - 2);
    if (this.closed.length > 2) this.closed.shift();
  }

  private summarise(c: number, closed: Closed): void {
    const column = this.columns[c] as Float64Array;
    const { work, bucket, time } = this;
    const { from, to } = closed;
    let count = 0;
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    let sum = 0;
    let squares = 0;
    let first = from;
    while (first < to && Number.isNaN(column[first] as number)) first++;
    if (first === to) return;
    const origin = column[first] as number;
    let last = first;
    for (let row = first; row < to; row++) {
      const value = column[row] as number;
      if (Number.isNaN(value)) continue;
      work[count++] = value;
      last = row;
      if (value < low) low = value;
      if (value > high) high = value;
      const off = value - origin;
      sum += off;
      squares += off * off;
    }
    bucket.time = time[first] as number;
    bucket.until = time[last] as number;
    bucket.low = low;
    bucket.high = high;
    bucket.count = count;
    bucket.middle = low === high ? low : middle(work, count);
    const mean = sum / count;
    bucket.spread = low === high ? 0 : Math.sqrt(Math.max(0, squares / count - mean * mean));
    const rows = this.buckets[c] as BucketRows;
    closed.index[c] = rows.length;
    rows.push(bucket);
    let score = (this.noise[c] as RunningNoise).score(bucket);
    for (const level of this.levels[c] ?? []) if (low < level && level <= high) score = Math.max(score, 2) + 1;
    closed.score[c] = score;
  }

  /** Keeps the samples of a closed bucket where it, the one before it or the one behind it is eventful. */
  private decide(at: number): void {
    const { closed, columns, time } = this;
    const bucket = closed[at];
    if (bucket === undefined) return;
    for (const [c, column] of columns.entries()) {
      const index = bucket.index[c] as number;
      if (index < 0) continue;
      let score = bucket.score[c] as number;
      for (const neighbour of [closed[at - 1], closed[at + 1]]) {
        if (neighbour !== undefined) score = Math.max(score, neighbour.score[c] as number);
      }
      if (score > 1) this.kept.keep(c, index, score, time, column, bucket.from, bucket.to);
    }
  }
}
