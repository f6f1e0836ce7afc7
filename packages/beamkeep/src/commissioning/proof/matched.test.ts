import fc from 'fast-check';
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
  it('law: no other way to pair them is cheaper (every way tried)', () => {
    const left = { row: 2, column: 1 };
    /** What the cheapest way costs from a row and a column on. */
    const cheapest = (costs: readonly (readonly number[])[], columns: number, row = 0, column = 0): number =>
      row === costs.length
        ? (columns - column) * left.column
        : Math.min(
            left.row + cheapest(costs, columns, row + 1, column),
            ...(column < columns
              ? [
                  left.column + cheapest(costs, columns, row, column + 1),
                  (costs[row]?.[column] as number) + cheapest(costs, columns, row + 1, column + 1),
                ]
              : []),
          );
    const costs = fc.tuple(fc.integer({ min: 0, max: 4 }), fc.integer({ min: 0, max: 4 })).chain(([rows, columns]) =>
      fc.array(fc.array(fc.integer({ min: 0, max: 12 }), { minLength: columns, maxLength: columns }), {
        minLength: rows,
        maxLength: rows,
      }),
    );
    fc.assert(
      fc.property(costs, (quarters) => {
        const all = quarters.map((row) => row.map((value) => value / 4)); // exact sums
        const columns = all[0]?.length ?? 0;
        const pairs = matched(all.length, columns, (row, column) => all[row]?.[column] as number, left);
        const taken = pairs.flatMap((column, row) => (column === undefined ? [] : [{ row, column }]));
        expect(taken.every(({ column }, at) => at === 0 || column > (taken[at - 1]?.column as number))).toBe(true);
        const cost =
          taken.reduce((sum, { row, column }) => sum + (all[row]?.[column] as number), 0) +
          (all.length - taken.length) * left.row +
          (columns - taken.length) * left.column;
        expect(cost).toBe(cheapest(all, columns));
      }),
      { seed: 6, numRuns: 300 },
    );
  });
});
