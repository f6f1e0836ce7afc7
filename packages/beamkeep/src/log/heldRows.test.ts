import { describe, expect, it } from 'vitest';
import { minute } from '../columns/index.js';
import { heldRows } from './heldRows.js';

/** What is made of rows that come in one block, or each in its own. */
function made(time: readonly number[], values: readonly number[], apart: boolean): [number, number][] {
  const rows: [number, number][] = [];
  const held = heldRows();
  const take = (block: { time: Float64Array; columns: readonly Float64Array[]; count: number }) => {
    for (let row = 0; row < block.count; row++) rows.push([block.time[row] ?? 0, block.columns[0]?.[row] ?? 0]);
  };
  const groups = apart ? time.map((_, row) => [row]) : [time.map((_, row) => row)];
  for (const group of groups) {
    const block = {
      time: Float64Array.from(group, (row) => time[row] ?? 0),
      columns: [Float64Array.from(group, (row) => values[row] ?? 0)],
      count: group.length,
    };
    held.add(block, (rows) => take(rows as never));
  }
  return rows;
}

describe('heldRows', () => {
  const time = [10_000, 2 * minute + 30_000, 2 * minute + 30_500];
  const expected = [
    [10_000, 5],
    [minute, 5],
    [2 * minute, 5],
    [2 * minute + 29_000, 5],
    [2 * minute + 30_000, 7],
    [2 * minute + 30_500, 8],
  ];
  it('repeats what is held every minute, and just before it changes', () =>
    expect(made(time, [5, 7, 8], false)).toEqual(expected));
  it('it does not matter how the rows come', () => expect(made(time, [5, 7, 8], true)).toEqual(expected));
  it('a year without a change is half a million rows, passed on in blocks', () => {
    let rows = 0;
    let largest = 0;
    heldRows().add(
      { time: Float64Array.of(0, 365 * 1440 * minute), columns: [Float64Array.of(1, 2)], count: 2 },
      (block) => {
        rows += block.count;
        largest = Math.max(largest, block.count);
      },
    );
    expect(rows).toBe(365 * 1440 + 2);
    expect(largest).toBeLessThanOrEqual(4096);
  });
});
