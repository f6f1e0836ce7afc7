import type { Trace } from '../columns/index.js';
import type { Scale } from './scale.js';

/** Buckets in a block. */
const blockBits = 12;
const blockRows = 1 << blockBits;

interface Block {
  readonly time: Float64Array;
  readonly until: Float64Array;
  readonly middle: Float64Array;
  readonly low: Float32Array;
  readonly high: Float32Array;
  readonly spread: Float32Array;
  readonly count: Uint32Array;
}

/** One bucket of one beam's readings. */
export interface Bucket {
  /** Instants of the first and the last reading [ms]. */
  time: number;
  until: number;
  /** Median, least, greatest, and standard deviation (divisor n) of the readings. */
  middle: number;
  low: number;
  high: number;
  spread: number;
  count: number;
}

/** One beam's buckets in a row that grows without being copied. */
export class BucketRows {
  private readonly blocks: Block[] = [];
  length = 0;

  push(bucket: Bucket): void {
    if ((this.length & (blockRows - 1)) === 0) this.blocks.push(emptyBlock(blockRows));
    this.write(this.length++, bucket);
  }

  /**
   * Joins neighbours that lie in the same stretch of time, before bucket `to`. Least, greatest and number of the joined
   * are exact; the median becomes the mean of the two, weighed by their numbers, so it is off by less than they are
   * apart; the spread takes the medians for means.
   *
   * @param width of a stretch [ms]
   * @param kept buckets that stay as they are, rising
   * @returns for each of `kept` its new number, and how many buckets fewer there are
   */
  join(to: number, width: number, kept: readonly number[]): { readonly kept: number[]; readonly fewer: number } {
    const moved: number[] = [];
    const bucket = emptyBucket();
    const last = emptyBucket();
    let next = 0;
    let joins = false;
    let into = 0;
    for (let index = 0; index < this.length; index++) {
      this.read(index, bucket);
      const stays = kept[next] === index;
      const free = !stays && index < to;
      if (free && joins && Math.floor(last.time / width) === Math.floor(bucket.time / width)) {
        joinInto(last, bucket);
        this.write(into - 1, last);
        joins = false;
        continue;
      }
      if (stays) {
        moved.push(into);
        next++;
      }
      this.write(into++, bucket);
      Object.assign(last, bucket);
      joins = free;
    }
    const fewer = this.length - into;
    this.length = into;
    this.blocks.length = Math.ceil(into / blockRows);
    return { kept: moved, fewer };
  }

  private read(index: number, bucket: Bucket): void {
    const block = this.blocks[index >>> blockBits] as Block;
    const at = index & (blockRows - 1);
    bucket.time = block.time[at] as number;
    bucket.until = block.until[at] as number;
    bucket.middle = block.middle[at] as number;
    bucket.low = block.low[at] as number;
    bucket.high = block.high[at] as number;
    bucket.spread = block.spread[at] as number;
    bucket.count = block.count[at] as number;
  }

  private write(index: number, { time, until, middle, low, high, spread, count }: Bucket): void {
    const block = this.blocks[index >>> blockBits] as Block;
    const at = index & (blockRows - 1);
    block.time[at] = time;
    block.until[at] = until;
    block.middle[at] = middle;
    block.low[at] = low;
    block.high[at] = high;
    block.spread[at] = spread;
    block.count[at] = count;
  }

  /**
   * Writes buckets `from` to `to` (excluded) into the rows of a trace, `row` and those behind it, and lets go of all
   * before `to`.
   *
   * @param scale its readings become shares of clean air
   */
  moveInto(trace: Trace, row: number, from: number, to: number, { clean, covered }: Scale): void {
    const span = clean - covered;
    for (let index = from; index < to; ) {
      const which = index >>> blockBits;
      const block = this.blocks[which] as Block;
      const end = Math.min(to, (which + 1) << blockBits);
      const shift = row - from;
      for (; index < end; index++) {
        const at = index & (blockRows - 1);
        const into = index + shift;
        trace.time[into] = block.time[at] as number;
        trace.until[into] = block.until[at] as number;
        const level = ((block.middle[at] as number) - covered) / span;
        // Rounded to single precision, the extremes must still hold the median between them.
        trace.level[into] = level;
        trace.low[into] = Math.min(level, ((block.low[at] as number) - covered) / span);
        trace.high[into] = Math.max(level, ((block.high[at] as number) - covered) / span);
        trace.spread[into] = (block.spread[at] as number) / span;
        trace.count[into] = block.count[at] as number;
      }
      if (index === (which + 1) << blockBits) this.blocks[which] = nothing;
    }
  }
}

/** Makes of a bucket and the one behind it one. */
function joinInto(bucket: Bucket, other: Bucket): void {
  const count = bucket.count + other.count;
  const middle = (bucket.middle * bucket.count + other.middle * other.count) / count;
  const squares = ({ spread, middle: own, count: n }: Bucket) => n * (spread * spread + (own - middle) ** 2);
  bucket.spread = Math.sqrt((squares(bucket) + squares(other)) / count);
  bucket.middle = middle;
  bucket.low = Math.min(bucket.low, other.low);
  bucket.high = Math.max(bucket.high, other.high);
  bucket.until = other.until;
  bucket.count = count;
}

const emptyBlock = (rows: number): Block => ({
  time: new Float64Array(rows),
  until: new Float64Array(rows),
  middle: new Float64Array(rows),
  low: new Float32Array(rows),
  high: new Float32Array(rows),
  spread: new Float32Array(rows),
  count: new Uint32Array(rows),
});

const nothing = emptyBlock(0);

/** A bucket to be filled in. Not with zeros: a field that has once held a whole number holds others less cheaply. */
export const emptyBucket = (): Bucket => ({
  time: Number.NaN,
  until: Number.NaN,
  middle: Number.NaN,
  low: Number.NaN,
  high: Number.NaN,
  spread: Number.NaN,
  count: 0,
});
