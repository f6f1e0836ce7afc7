import { UsageError } from '../columns/index.js';
import type { Site } from '../site/index.js';
import { newline } from './cells.js';
import { resolveDoubledHours } from './doubledHour.js';
import { dropFarTimes } from './farTimes.js';
import type { NoteBook } from './inputNotes.js';
import type { LinePlan } from './linePlan.js';
import { LineReader } from './lineReader.js';
import { mend } from './mended.js';
import type { LinedBlock } from './mergedRows.js';
import { longestLine, tooLong } from './openLog.js';
import { grow, type RowWindow, rowWindow, shift } from './rowWindow.js';

/** Values held back so that lines out of order can be put in their place. */
const valuesHeldBack = 1 << 18;
/** Most values held where a log is in no order at all. */
const mostValues = 1 << 25;

/** What one file gave besides its rows. */
export interface FileTally {
  lines: number;
  dropped: number;
}

/** What is known of a file before its lines are read. */
export interface FileToRead {
  readonly file: string;
  readonly plan: LinePlan;
  /** Lines up to and with the header. */
  readonly headerLines: number;
  readonly width: number;
  readonly absent: number;
  readonly site: Site;
  readonly notes: NoteBook;
  readonly plain: boolean;
}

/**
 * The rows of one file, in order of time.
 *
 * @param chunks its bytes after the header, cut anywhere
 * @param tally is filled in
 */
export async function* fileRows(
  chunks: AsyncIterable<Uint8Array>,
  { file, plan, headerLines, width, absent, site, notes, plain }: FileToRead,
  tally: FileTally,
): AsyncGenerator<LinedBlock> {
  const held = Math.max(1024, Math.floor(valuesHeldBack / (width + 1)));
  const window = rowWindow(width, Math.min(1024, 2 * held));
  const reader = new LineReader(plan, window, { file, zone: site.timeZone, notes, absent, plain }, headerLines);
  let dropped = 0;
  let disorderly = false;

  const settle = (whole: boolean) => {
    resolveDoubledHours(reader, window, file, site.timeZone, notes);
    dropped += dropFarTimes(window, file, notes, whole);
    if (!window.disordered) return;
    const count = window.count;
    const mending = mend(window, file, notes, absent, plan.columnOf !== undefined);
    dropped += mending.dropped;
    disorderly = mending.moved > count / 10;
  };
  /** Makes room in a full window; gives the number of rows at its beginning that are in their final place. */
  const ready = (): number => {
    if (window.capacity < 2 * held) {
      grow(window, Math.min(2 * window.capacity, 2 * held));
      return 0;
    }
    settle(false);
    if (disorderly) {
      if (2 * window.capacity * width > mostValues) {
        throw new UsageError(
          `${file}:${reader.lines}: the lines are in no order of time, and there are too many to sort in memory: sort the file by time`,
        );
      }
      if (window.count > window.capacity / 2) grow(window, 2 * window.capacity);
      return 0;
    }
    return Math.max(0, window.count - held);
  };

  function* parse(bytes: Uint8Array, from: number, to: number): Generator<LinedBlock> {
    for (let p = from; p < to; ) {
      p = reader.read(bytes, p, to);
      if (window.count < window.capacity) continue;
      const rows = ready();
      if (rows === 0) continue;
      yield block(window, rows);
      shift(window, rows);
    }
  }

  let carried = new Uint8Array(4096);
  let carriedLength = 0;
  const carry = (bytes: Uint8Array) => {
    const length = carriedLength + bytes.length;
    if (length > longestLine) {
      throw tooLong(file, reader.lines + 1);
    }
    if (length > carried.length) {
      const longer = new Uint8Array(Math.max(length, 2 * carried.length));
      longer.set(carried.subarray(0, carriedLength));
      carried = longer;
    }
    carried.set(bytes, carriedLength);
    carriedLength = length;
  };

  for await (const chunk of chunks) {
    const bytes = new Uint8Array(chunk.buffer, chunk.byteOffset, chunk.length);
    let from = 0;
    if (carriedLength > 0) {
      const end = bytes.indexOf(newline);
      from = end < 0 ? bytes.length : end + 1;
      carry(bytes.subarray(0, from));
      if (end < 0) continue;
      yield* parse(carried, 0, carriedLength);
      carriedLength = 0;
    }
    const to = bytes.lastIndexOf(newline) + 1;
    if (to > from) yield* parse(bytes, from, to);
    carry(bytes.subarray(Math.max(from, to)));
  }
  if (carriedLength > 0) {
    carry(Uint8Array.of(newline));
    yield* parse(carried, 0, carriedLength);
  }
  settle(true);
  if (window.count > 0) yield block(window, window.count);
  tally.lines = reader.lines;
  tally.dropped += reader.dropped + dropped;
}

/** The first rows of a window, as views. */
function block({ time, line, values, capacity, width }: RowWindow, count: number): LinedBlock {
  const columns = Array.from({ length: width }, (_, c) => values.subarray(c * capacity, c * capacity + count));
  return { time: time.subarray(0, count), line: line.subarray(0, count), columns, count };
}
