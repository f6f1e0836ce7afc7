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
        trace.level[into] = ((block.middle[at] as number) - covered) / span;
        trace.low[into] = ((block.low[at] as number) - covered) / span;
        trace.high[into] = ((block.high[at] as number) - covered) / span;
        trace.spread[into] = (block.spread[at] as number) / span;
        trace.count[into] = block.count[at] as number;
      }
      if (index === (which + 1) << blockBits) this.blocks[which] = nothing;
    }
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

const nothing = emptyBlock(0);

/** A bucket to be filled in. */
export const emptyBucket = (): Bucket => ({ time: 0, until: 0, middle: 0, low: 0, high: 0, spread: 0, count: 0 });
