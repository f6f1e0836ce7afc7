import { rowAt } from '../columns/index.js';
import type { NoteBook } from './inputNotes.js';
import type { RowBlock } from './rowBlock.js';

/*
 * Several files, one log: their rows in one order of time. Where files follow each other, whole stretches pass as they
 * are; where they cover the same time (a file a beam, exports that overlap), rows of one time become one row.
 */

/** Rows that know their lines. */
export interface LinedBlock extends RowBlock {
  readonly line: Uint32Array;
}

/** One of the files, not yet read. */
export interface RowFile {
  readonly file: string;
  /** Time of its first row, as far as its first lines tell [ms]. */
  readonly firstTime: number;
  rows(): AsyncIterable<LinedBlock>;
  /** Told how many lines were dropped because another file had them too. */
  drop(lines: number): void;
}

interface Cursor {
  readonly source: RowFile;
  readonly blocks: AsyncIterator<LinedBlock>;
  block: LinedBlock;
  at: number;
}

/** Rows of one time that are joined are gathered in blocks of this size. */
const joinedRows = 4096;

/** The rows of all files in order of time. */
export async function* mergedRows(
  files: readonly RowFile[],
  width: number,
  absent: number,
  notes: NoteBook,
): AsyncGenerator<RowBlock> {
  const [only] = files;
  if (files.length === 1 && only !== undefined) {
    yield* only.rows();
    return;
  }
  const waiting = [...files].sort((a, b) => a.firstTime - b.firstTime);
  const active: Cursor[] = [];
  let last = Number.NEGATIVE_INFINITY;
  const time = new Float64Array(joinedRows);
  const columns = Array.from({ length: width }, () => new Float64Array(joinedRows));
  let count = 0;
  const gathered = (): RowBlock => {
    const block = { time: time.subarray(0, count), columns: columns.map((column) => column.subarray(0, count)), count };
    count = 0;
    return block;
  };
  const now = ({ block, at }: Cursor) => block.time[at] as number;
  const advance = async (cursor: Cursor): Promise<void> => {
    if (cursor.at < cursor.block.count) return;
    const { done, value } = await cursor.blocks.next();
    if (done) active.splice(active.indexOf(cursor), 1);
    else {
      cursor.block = value;
      cursor.at = 0;
    }
  };

  for (;;) {
    const least = active.reduce((time, cursor) => Math.min(time, now(cursor)), Number.POSITIVE_INFINITY);
    const next = waiting[0];
    if (next !== undefined && next.firstTime <= least) {
      waiting.shift();
      const blocks = next.rows()[Symbol.asyncIterator]();
      const { done, value } = await blocks.next();
      if (!done) active.push({ source: next, blocks, block: value, at: 0 });
      continue;
    }
    const cursors = active.filter((cursor) => now(cursor) === least);
    const [cursor] = cursors;
    if (cursor === undefined) break;
    if (least <= last) {
      const { block, source } = cursor;
      const from = cursor.at;
      while (cursor.at < block.count && now(cursor) <= last) cursor.at++;
      const lines = cursor.at - from;
      const kind = 'earlier than what was read from other files: dropped';
      notes.note(source.file, block.line[from] as number, kind, { lines });
      source.drop(lines);
      await advance(cursor);
      continue;
    }
    if (cursors.length === 1) {
      const others = active.reduce(
        (time, other) => (other === cursor ? time : Math.min(time, now(other))),
        waiting[0]?.firstTime ?? Number.POSITIVE_INFINITY,
      );
      const { block, at } = cursor;
      const to = Math.max(at + 1, rowAt(block.time.subarray(0, block.count), others));
      if (count > 0) yield gathered();
      yield {
        time: block.time.subarray(at, to),
        columns: block.columns.map((column) => column.subarray(at, to)),
        count: to - at,
      };
      last = block.time[to - 1] as number;
      cursor.at = to;
      await advance(cursor);
      continue;
    }
    join(cursors, least);
    last = least;
    if (count === joinedRows) yield gathered();
    for (const joined of cursors) {
      joined.at++;
      await advance(joined);
    }
  }
  if (count > 0) yield gathered();

  function join(cursors: readonly Cursor[], at: number): void {
    time[count] = at;
    for (const column of columns) column[count] = absent;
    cursors.forEach(({ block, at: row, source }, k) => {
      let differs = false;
      let fills = false;
      columns.forEach((column, c) => {
        const known = column[count] as number;
        const other = block.columns[c]?.[row] as number;
        if (Object.is(other, absent) || Number.isNaN(other) || Object.is(known, other)) return;
        if (Object.is(known, absent) || Number.isNaN(known)) {
          column[count] = other;
          fills = true;
        } else differs = true;
      });
      if (k === 0 || fills) return;
      const kind = differs
        ? 'another reading at the same time in another file: the first was kept'
        : 'in another file as well: dropped';
      notes.note(source.file, block.line[row] as number, kind);
      source.drop(1);
    });
    count++;
  }
}
