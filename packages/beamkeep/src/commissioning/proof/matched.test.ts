import { describe, expect, it } from 'vitest';
import { matched } from './matched.js';

const pair = (rows: readonly number[], columns: readonly number[]) =>
  matched(rows.length, columns.length, (row, column) => Math.abs((rows[row] as number) - (columns[column] as number)), {
    row: 2,
    column: 1,
  });

describe('matched', () => {
  it('pairs equal lists one to one', () => expect(pair([1, 2, 3], [1, 2, 3])).toEqual([0, 1, 2]));
  it('leaves out what belongs to nothing', () => expect(pair([1, 9], [1, 5, 9])).toEqual([0, 2]));
  it('leaves a row without a column', () => expect(pair([1, 20, 3], [1, 3])).toEqual([0, undefined, 1]));
  it('keeps the order', () => expect(pair([9, 1], [1, 9])).toEqual([undefined, 0]));
  it('of nothing is nothing', () => {
    expect(pair([], [1, 2])).toEqual([]);
    expect(pair([1], [])).toEqual([undefined]);
  });
});
