/** Buckets in a block. */
const blockRows = 1 << 12;

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

  push({ time, until, middle, low, high, spread, count }: Bucket): void {
    const at = this.length & (blockRows - 1);
    if (at === 0) this.blocks.push(emptyBlock(blockRows));
    const block = this.blocks.at(-1);
    if (block === undefined) return;
    block.time[at] = time;
    block.until[at] = until;
    block.middle[at] = middle;
    block.low[at] = low;
    block.high[at] = high;
    block.spread[at] = spread;
    block.count[at] = count;
    this.length++;
  }

  /** Writes bucket `index` into `bucket`. */
  read(index: number, bucket: Bucket): void {
    const block = this.blocks[index >>> 12];
    if (block === undefined) return;
    const at = index & (blockRows - 1);
    bucket.time = block.time[at] as number;
    bucket.until = block.until[at] as number;
    bucket.middle = block.middle[at] as number;
    bucket.low = block.low[at] as number;
    bucket.high = block.high[at] as number;
    bucket.spread = block.spread[at] as number;
    bucket.count = block.count[at] as number;
  }

  /** Lets go of all buckets. */
  clear(): void {
    this.blocks.length = 0;
    this.length = 0;
  }
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

/** A bucket to be filled in. */
export const emptyBucket = (): Bucket => ({ time: 0, until: 0, middle: 0, low: 0, high: 0, spread: 0, count: 0 });
