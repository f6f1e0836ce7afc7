import { type LogSource, logOfText } from 'beamkeep/log';
import fc from 'fast-check';
import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { inChunks, rowsOf, siteOf } from './rowsOf.js';

const start = Date.UTC(2027, 0, 4);
const line = (row: number): string => `${new Date(start + row * 1000).toISOString()},${row % 100}`;
const fileOf = (name: string, from: number, to: number): LogSource =>
  logOfText(`time,b1\n${Array.from({ length: to - from }, (_, at) => line(from + at)).join('\n')}\n`, name);

describe('several files, one log', () => {
  it('in order of time, whatever the order they are named in', async () => {
    const files = [fileOf('c.csv', 2000, 3000), fileOf('a.csv', 0, 1000), fileOf('b.csv', 1000, 2000)];
    const { time, columns, input } = await rowsOf(files, siteOf(['b1']));
    expect(time).toEqual(Array.from({ length: 3000 }, (_, row) => start + row * 1000));
    expect(columns[0]?.[2999]).toBe(99);
    expect(input.lines).toBe(3003);
    expect(input.notes).toEqual([{ line: 2, lines: 1, what: 'times were taken for ISO 8601', file: 'c.csv' }]);
  });

  it('lines that two files share are told and dropped', async () => {
    const { time, input } = await rowsOf([fileOf('a.csv', 0, 1000), fileOf('b.csv', 990, 2000)], siteOf(['b1']));
    expect(time.length).toBe(2000);
    expect(input.dropped).toBe(10);
    expect(input.notes.at(-1)).toEqual({ line: 2, lines: 10, what: 'in another file as well: dropped', file: 'b.csv' });
  });

  it('a file a beam: rows of one time become one row', async () => {
    const a = logOfText('time,b1\n2027-01-04T00:00:00Z,1\n2027-01-04T00:01:00Z,2\n', 'a.csv');
    const b = logOfText('when\tb2\n1799020800\t5\n1799020860\t6\n1799020920\t7\n', 'b.csv');
    const { time, columns } = await rowsOf([a, b], siteOf(['b1', 'b2']));
    expect(time).toEqual([0, 1, 2].map((minute) => start + minute * 60_000));
    expect(columns).toEqual([
      [1, 2, Number.NaN],
      [5, 6, 7],
    ]);
  });

  it('a column must stand in one of them', async () => {
    const files = [fileOf('a.csv', 0, 10), fileOf('b.csv', 10, 20)];
    await expect(rowsOf(files, siteOf(['b1', 'b2']))).rejects.toThrow(
      'a.csv:1 (and 1 more): beams[1] signalColumn: no column "b2": is it "b1"? (there are "time", "b1")',
    );
  });

  it('a file without a line of data is left out and told, unless all are', async () => {
    const files = [logOfText('', 'a.csv'), fileOf('b.csv', 0, 10), logOfText('time,b1\n', 'c.csv')];
    const { time, input } = await rowsOf(files, siteOf(['b1']));
    expect(time).toHaveLength(10);
    expect(input.notes.slice(0, 2)).toEqual([
      { line: 1, lines: 1, what: 'no line of data in the file: left out', file: 'a.csv' },
      { line: 1, lines: 1, what: 'no line of data in the file: left out', file: 'c.csv' },
    ]);
    await expect(rowsOf([files[0], files[2]] as LogSource[], siteOf(['b1']))).rejects.toThrow(
      'a.csv: the file is empty',
    );
  });

  it('an error names the file it stands in', async () => {
    await expect(rowsOf([fileOf('a.csv', 0, 10), logOfText('x\n1\n', 'b.csv')], siteOf(['b1']))).rejects.toThrow(
      'b.csv:1: no column beside time ("x")',
    );
  });

  it('law: it does not matter where a log is cut into files, nor whether they can be read anew', () =>
    fc.assert(
      fc.asyncProperty(
        fc.array(fc.integer({ min: 1, max: 499 }), { maxLength: 6 }),
        fc.boolean(),
        async (cuts, once) => {
          const edges = [0, ...new Set(cuts.toSorted((a, b) => a - b)), 500];
          const files = edges.slice(1).map((to, at) => {
            const name = `${(at * 7) % 10}.csv`;
            const text = `time,b1\n${Array.from({ length: to - (edges[at] ?? 0) }, (_, k) => line((edges[at] ?? 0) + k)).join('\n')}\n`;
            return once ? { name, bytes: inChunks(strToU8(text), [97]) } : logOfText(text, name);
          });
          const { time, columns } = await rowsOf(files.reverse(), siteOf(['b1']));
          expect(time).toEqual(Array.from({ length: 500 }, (_, row) => start + row * 1000));
          expect(columns[0]).toEqual(Array.from({ length: 500 }, (_, row) => row % 100));
        },
      ),
      { seed: 82, numRuns: 40 },
    ));
});
