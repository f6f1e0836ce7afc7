import { describe, expect, it } from 'vitest';
import { noteBook } from './inputNotes.js';
import { type LinedBlock, mergedRows, type RowFile } from './mergedRows.js';

/** A file whose rows come in blocks; each row holds its time as its value. */
function fileOf(file: string, blocks: readonly (readonly number[])[], firstTime = blocks[0]?.[0] ?? 0) {
  const told = { opened: false, dropped: 0 };
  const source: RowFile = {
    file,
    firstTime,
    async *rows(): AsyncGenerator<LinedBlock> {
      told.opened = true;
      for (const times of blocks) {
        const time = Float64Array.from(times);
        yield {
          time,
          line: Uint32Array.from(times, (_, row) => row + 2),
          columns: [time.slice()],
          count: times.length,
        };
      }
    },
    drop(lines) {
      told.dropped += lines;
    },
  };
  return { source, told };
}
async function merged(files: readonly RowFile[]) {
  const times: number[] = [];
  const notes = noteBook();
  for await (const { time, count } of mergedRows(files, 1, Number.NaN, notes)) times.push(...time.subarray(0, count));
  return { times, notes: notes.list(2) };
}

describe('mergedRows', () => {
  it('files that follow each other, and files that overlap', async () => {
    const a = fileOf('a', [
      [1, 2],
      [5, 9],
    ]);
    const b = fileOf('b', [[3, 4, 6]]);
    const c = fileOf('c', [[20, 21]]);
    expect((await merged([c.source, b.source, a.source])).times).toEqual([1, 2, 3, 4, 5, 6, 9, 20, 21]);
  });
  it('a file is opened when its time has come', async () => {
    const a = fileOf('a', [[1, 2]]);
    const b = fileOf('b', [[10]]);
    const rows = mergedRows([a.source, b.source], 1, Number.NaN, noteBook());
    await rows.next();
    expect([a.told.opened, b.told.opened]).toEqual([true, false]);
  });
  it('rows of one time become one, and what another file has too is told', async () => {
    const a = fileOf('a', [[1, 2, 3]]);
    const b = fileOf('b', [[2, 3, 4]]);
    const { times, notes } = await merged([a.source, b.source]);
    expect(times).toEqual([1, 2, 3, 4]);
    expect(notes).toEqual([{ line: 2, lines: 2, what: 'in another file as well: dropped', file: 'b' }]);
    expect(b.told.dropped).toBe(2);
  });
  it('a file that begins earlier than its first lines said', async () => {
    const a = fileOf('a', [[10, 11]]);
    const b = fileOf('b', [[3, 4, 12]], 11);
    const { times, notes } = await merged([a.source, b.source]);
    expect(times).toEqual([10, 11, 12]);
    expect(notes[0]).toMatchObject({ lines: 2, what: 'earlier than what was read from other files: dropped' });
    expect(b.told.dropped).toBe(2);
  });
});
