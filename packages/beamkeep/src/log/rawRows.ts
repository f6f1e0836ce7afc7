import { type PackedNumbers, packed, perMillisecond, perReading, unpack } from './packedNumbers.js';

/** Rows in a block. */
const blockRows = 1 << 13;

interface Block {
  readonly count: number;
  readonly time: PackedNumbers;
  readonly columns: readonly PackedNumbers[];
}

/** Rows of a block, ready to be looked at; only good until the next block is asked for. */
export interface RawBlock {
  readonly time: Float64Array;
  readonly columns: readonly Float64Array[];
  readonly count: number;
}

/** Every row of a log: a shared column of times and some columns of readings, packed block by block. */
export class RawRows {
  private blocks: Block[] = [];
  private readonly openTime = new Float64Array(blockRows);
  private readonly openColumns: readonly Float64Array[];
  private openCount = 0;
  /** Number of rows. */
  count = 0;

  constructor(width: number) {
    this.openColumns = Array.from({ length: width }, () => new Float64Array(blockRows));
  }

  /** Adds rows `from` to `to` (excluded). */
  add(time: Float64Array, columns: readonly Float64Array[], from: number, to: number): void {
    for (let row = from; row < to; ) {
      const rows = Math.min(to - row, blockRows - this.openCount);
      this.openTime.set(time.subarray(row, row + rows), this.openCount);
      for (const [c, column] of this.openColumns.entries()) {
        column.set((columns[c] as Float64Array).subarray(row, row + rows), this.openCount);
      }
      this.openCount += rows;
      this.count += rows;
      row += rows;
      if (this.openCount === blockRows) this.close();
    }
  }

  private close(): void {
    const { openTime, openColumns, openCount: count } = this;
    if (count === 0) return;
    const time = packed(openTime, count, openTime[0] as number, perMillisecond);
    this.blocks.push({ count, time, columns: openColumns.map((column) => packed(column, count, 0, perReading)) });
    this.openCount = 0;
  }

  /** Every row, block by block. */
  *rows(): Generator<RawBlock> {
    this.close();
    const time = new Float64Array(blockRows);
    const columns = this.openColumns.map(() => new Float64Array(blockRows));
    for (const block of this.blocks) {
      unpack(block.time, time);
      for (const [c, column] of columns.entries()) unpack(block.columns[c] as PackedNumbers, column);
      yield { time, columns, count: block.count };
    }
  }

  /** The same, and lets go of them. */
  *takeRows(): Generator<RawBlock> {
    yield* this.rows();
    this.blocks = [];
    this.count = 0;
  }

  /** All times in one column. */
  times(): Float64Array {
    this.close();
    const all = new Float64Array(this.count);
    let at = 0;
    for (const { time, count } of this.blocks) {
      unpack(time, all.subarray(at));
      at += count;
    }
    return all;
  }

  /** Times and values of a column, without the missing ones; the given times themselves where none is missing. */
  usable(column: number, times: Float64Array): { readonly time: Float64Array; readonly value: Float64Array } {
    this.close();
    const value = new Float64Array(this.count);
    let at = 0;
    for (const { columns, count } of this.blocks) {
      unpack(columns[column] as PackedNumbers, value.subarray(at));
      at += count;
    }
    let usable = 0;
    for (const reading of value) if (!Number.isNaN(reading)) usable++;
    if (usable === this.count) return { time: times, value };
    const time = new Float64Array(usable);
    usable = 0;
    for (let row = 0; row < this.count; row++) {
      const reading = value[row] as number;
      if (Number.isNaN(reading)) continue;
      time[usable] = times[row] as number;
      value[usable++] = reading;
    }
    return { time, value: value.subarray(0, usable) };
  }
}
