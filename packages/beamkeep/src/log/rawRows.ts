/** Rows in a block. */
const blockRows = 1 << 14;

/** Every row of a log: a shared column of times and one column a beam, in blocks that are never copied. */
export class RawRows {
  private readonly blocks: { readonly time: Float64Array; readonly columns: readonly Float64Array[] }[] = [];
  /** Number of rows. */
  count = 0;

  constructor(private readonly width: number) {}

  /** Adds rows `from` to `to` (excluded). */
  add(time: Float64Array, columns: readonly Float64Array[], from: number, to: number): void {
    for (let row = from; row < to; ) {
      const at = this.count % blockRows;
      if (at === 0) {
        const block = Array.from({ length: this.width }, () => new Float64Array(blockRows));
        this.blocks.push({ time: new Float64Array(blockRows), columns: block });
      }
      const block = this.blocks.at(-1);
      if (block === undefined) return;
      const rows = Math.min(to - row, blockRows - at);
      block.time.set(time.subarray(row, row + rows), at);
      block.columns.forEach((column, c) => {
        column.set((columns[c] as Float64Array).subarray(row, row + rows), at);
      });
      this.count += rows;
      row += rows;
    }
  }

  /** Every row, block by block. */
  *rows(): Generator<{
    readonly time: Float64Array;
    readonly columns: readonly Float64Array[];
    readonly count: number;
  }> {
    for (const [at, { time, columns }] of this.blocks.entries()) {
      yield { time, columns, count: Math.min(blockRows, this.count - at * blockRows) };
    }
  }

  /** The same, each block let go once it has been used. */
  *takeRows(): Generator<{
    readonly time: Float64Array;
    readonly columns: readonly Float64Array[];
    readonly count: number;
  }> {
    let left = this.count;
    this.count = 0;
    for (let block = this.blocks.shift(); block !== undefined; block = this.blocks.shift()) {
      yield { ...block, count: Math.min(blockRows, left) };
      left -= blockRows;
    }
  }

  /** All times in one column. */
  times(): Float64Array {
    const all = new Float64Array(this.count);
    let at = 0;
    for (const { time, count } of this.rows()) {
      all.set(time.subarray(0, count), at);
      at += count;
    }
    return all;
  }

  /** Times and values of a column, without the missing ones; the given times themselves where none is missing. */
  usable(column: number, times: Float64Array): { readonly time: Float64Array; readonly value: Float64Array } {
    const value = new Float64Array(this.count);
    const kept = new Uint32Array(this.count);
    let usable = 0;
    let row = 0;
    for (const { columns, count } of this.rows()) {
      const from = columns[column] as Float64Array;
      for (let i = 0; i < count; i++, row++) {
        const reading = from[i] as number;
        if (Number.isNaN(reading)) continue;
        kept[usable] = row;
        value[usable++] = reading;
      }
    }
    if (usable === this.count) return { time: times, value };
    const time = new Float64Array(usable);
    for (let i = 0; i < usable; i++) time[i] = times[kept[i] as number] as number;
    return { time, value: value.slice(0, usable) };
  }
}
