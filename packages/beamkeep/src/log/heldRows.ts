import { minute, second } from '../columns/index.js';
import type { RowBlock } from './rowBlock.js';

/*
 * A log that says a value only when it changes, made regular: what is held is said again every minute, and once more
 * just before it changes, so that an hour's median weighs what held by how long it held, and a sudden change stays
 * sudden.
 *
 *     logged   10:00:10 a                          10:02:30 b
 *     made     10:00:10 a  10:01 a  10:02 a  10:02:29 a  10:02:30 b
 */

/** Rows in a block that is passed on. */
const blockRows = 4096;

/** Makes the rows of an on-change log regular. */
export function heldRows() {
  let last = Number.NaN;
  let held: number[] = [];
  return {
    add(block: RowBlock, take: (rows: RowBlock) => void): void {
      const width = block.columns.length;
      const time = new Float64Array(blockRows);
      const columns = Array.from({ length: width }, () => new Float64Array(blockRows));
      let count = 0;
      const flush = () => {
        if (count > 0) take({ time: time.subarray(0, count), columns, count });
        count = 0;
      };
      const put = (instant: number) => {
        if (count === blockRows) flush();
        time[count] = instant;
        for (let c = 0; c < width; c++) (columns[c] as Float64Array)[count] = held[c] as number;
        count++;
        last = instant;
      };
      for (let row = 0; row < block.count; row++) {
        const now = block.time[row] as number;
        const before = now - second;
        for (let mark = nextMark(last); mark < before; mark = nextMark(last)) put(mark);
        if (last < before) put(before);
        held = block.columns.map((column) => column[row] as number);
        put(now);
      }
      flush();
    },
  };
}

const nextMark = (instant: number): number => (Math.floor(instant / minute) + 1) * minute;
