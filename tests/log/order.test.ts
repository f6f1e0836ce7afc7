import { logOfText } from 'beamkeep/log';
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rowsOf, siteOf } from './rowsOf.js';

const start = Date.UTC(2027, 0, 4);
const line = (row: number): string => `${new Date(start + row * 1000).toISOString()},${row % 100}`;
const logOf = (rows: readonly number[]): string => `time,b1\n${rows.map(line).join('\n')}\n`;
const read = (text: string) => rowsOf(logOfText(text), siteOf(['b1']));
const upTo = (rows: number): number[] => Array.from({ length: rows }, (_, row) => row);

describe('lines out of order', () => {
  it('a log that runs backwards is turned round, however long', async () => {
    const rows = 300_000;
    const { time, columns, input } = await read(logOf(upTo(rows).reverse()));
    expect(time.length).toBe(rows);
    expect(time.every((instant, row) => instant === start + row * 1000)).toBe(true);
    expect(columns[0]?.[299_999]).toBe(99);
    expect(input.dropped).toBe(0);
  });

  it('law: displaced and doubled lines come to their place, and each line is accounted for', () =>
    fc.assert(
      fc.asyncProperty(
        fc.array(fc.tuple(fc.nat(), fc.integer({ min: -40, max: 40 }), fc.boolean()), { maxLength: 30 }),
        async (moves) => {
          const rows = upTo(2000);
          for (const [where, by, doubled] of moves) {
            const from = where % rows.length;
            const [row = 0] = rows.splice(from, doubled ? 0 : 1, ...(doubled ? [rows[from] ?? 0] : []));
            if (!doubled) rows.splice(Math.max(0, from + by), 0, row);
          }
          const { time, input } = await read(logOf(rows));
          expect(time).toEqual(upTo(2000).map((row) => start + row * 1000));
          expect(input.lines - 1 - input.dropped).toBe(time.length);
        },
      ),
      { seed: 81, numRuns: 40 },
    ));

  it('a line that comes later than the reader can wait is dropped and told', async () => {
    const rows = [...upTo(300_000), 5.5];
    const { time, input } = await read(logOf(rows));
    expect(time.length).toBe(300_000);
    expect(input.dropped).toBe(1);
    expect(input.notes.at(-1)).toEqual({
      line: 300_002,
      lines: 1,
      what: 'too far out of order to be put in its place: dropped',
    });
  });

  it('lines of years ago are dropped and told', async () => {
    const { time, input } = await read(
      `time,b1\n1970-01-01T00:00:05Z,1\n1970-01-01T00:01:05Z,1\n${upTo(100).map(line).join('\n')}\n`,
    );
    expect(time[0]).toBe(start);
    expect(input.notes.at(-1)).toEqual({
      line: 2,
      lines: 2,
      what: 'the time lies years from the lines around: dropped',
    });
  });
});
