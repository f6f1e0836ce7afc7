import { UsageError } from '../columns/index.js';
import { quoted, type Site } from '../site/index.js';
import { type LogPlan, logPlan } from './columnPlan.js';
import { type FileTally, type FileToRead, fileRows } from './fileRows.js';
import { firstTime } from './firstTime.js';
import { EmptyLog } from './head.js';
import { type InputReport, type NoteBook, noteBook } from './inputNotes.js';
import type { LogSource, LogSources, ReadOptions } from './logSource.js';
import { mergedRows } from './mergedRows.js';
import { type OpenLog, openLog, type Watch } from './openLog.js';
import type { RowBlock, RowSink } from './rowBlock.js';
import { shownName } from './shownName.js';
import { listed } from './theOnly.js';

/**
 * Reads a log, row by row in order of time, into a sink. Every sample comes, none is condensed.
 *
 * @param sources the log, or the files that are one log, in any order
 * @param site what it is a log of
 * @param sink takes the rows; with `sampling` on-change every column of a row holds the value that stands at its time
 * @returns lines read, lines dropped, and what was mended
 * @throws UsageError where the log cannot be used: it names the file, the line or the column, and what to do
 * @example await readRows(logOfText(csv), site, { header() {}, rows: ({ time }) => { … }, end() {} })
 */
export async function readRows(
  sources: LogSources,
  site: Site,
  sink: RowSink,
  options: ReadOptions = {},
): Promise<InputReport> {
  const all = Array.isArray(sources) ? (sources as readonly LogSource[]) : [sources as LogSource];
  if (all.length === 0) throw new UsageError('no log: name at least one file');
  const elsewhere = all[0]?.elsewhere;
  const given = all.every((source) => source.elsewhere === elsewhere)
    ? elsewhere?.(all, site, sink, options)
    : undefined;
  if (given !== undefined) return given;
  const notes = noteBook();
  const watch = watching(options);
  const logs: OpenLog[] = [];
  try {
    const empty = new Map<string, EmptyLog>();
    for (const source of all) {
      try {
        logs.push(await openLog(source, site, watch, all.length > 1));
      } catch (error) {
        if (!(error instanceof EmptyLog)) throw error;
        empty.set(source.name, error);
      }
    }
    for (const [name, error] of empty) {
      if (logs.length === 0) throw error;
      notes.note(shownName(name), 1, 'no line of data in the file: left out');
    }
    const plan = logPlan(
      logs.map(({ head }) => head),
      site,
      notes,
    );
    const onChange = site.sampling === 'on-change';
    // A value that a line says nothing of goes on holding; one that it says is missing does not.
    const absent = onChange ? Number.POSITIVE_INFINITY : Number.NaN;
    const tallies: FileTally[] = logs.map(() => ({ lines: 0, dropped: 0 }));
    const width = plan.columns.names.length;
    const files = logs.map((log, at) => {
      const file: FileToRead = {
        file: log.head.file,
        plan: plan.files[at] as FileToRead['plan'],
        headerLines: log.head.headerLine,
        width,
        absent,
        site,
        notes,
        plain: options.plain ?? true,
      };
      const tally = tallies[at] as FileTally;
      return {
        file: file.file,
        firstTime: firstTime(log.head, file.plan, site.timeZone),
        async *rows() {
          yield* fileRows(log.data(), file, tally);
          const damage = log.damage();
          if (damage !== undefined) notes.note(file.file, tally.lines, damage);
        },
        drop: (lines: number) => {
          tally.dropped += lines;
        },
      };
    });
    sink.header(plan.columns);
    const blocks = mergedRows(files, width, absent, notes);
    const held = new Float64Array(width).fill(Number.NaN);
    const usable = new Float64Array(width);
    let rows = 0;
    for await (const block of blocks) {
      if (onChange) fillForward(block, held, plan.columns.stated);
      rows += block.count;
      countUsable(block, usable);
      sink.rows(block);
    }
    refuseUseless(logs, plan, rows, usable, notes, site);
    sink.end();
    return {
      lines: tallies.reduce((sum, { lines }) => sum + lines, 0),
      dropped: tallies.reduce((sum, { dropped }) => sum + dropped, 0),
      notes: notes.list(all.length),
    };
  } finally {
    for (const log of logs) await log.close();
  }
}

/** Counts the bytes for the progress, and looks whether reading was cancelled. */
function watching({ onProgress, signal }: ReadOptions): Watch {
  let read = 0;
  return async function* watched(bytes) {
    for await (const chunk of bytes) {
      if (signal?.aborted) throw Object.assign(new Error('reading was cancelled'), { name: 'AbortError' });
      read += chunk.length;
      yield chunk;
      onProgress?.(read);
    }
  };
}

/** Puts the value that holds into every place that a line says nothing of, and counts those that lines say. */
function fillForward({ columns, count }: RowBlock, held: Float64Array, stated: Float64Array): void {
  columns.forEach((column, c) => {
    let value = held[c] as number;
    for (let row = 0; row < count; row++) {
      if (column[row] === Number.POSITIVE_INFINITY) column[row] = value;
      else {
        value = column[row] as number;
        if (!Number.isNaN(value)) stated[c] = (stated[c] as number) + 1;
      }
    }
    held[c] = value;
  });
}

function countUsable({ columns, count }: RowBlock, usable: Float64Array): void {
  columns.forEach((column, c) => {
    if ((usable[c] as number) > 0) return;
    for (let row = 0; row < count; row++) {
      if (!Number.isNaN(column[row] as number)) {
        usable[c] = 1;
        return;
      }
    }
  });
}

/** A log without a single usable reading is refused; a beam without one is told. */
function refuseUseless(
  logs: readonly OpenLog[],
  { columns: { names, signal }, unwanted }: LogPlan,
  rows: number,
  usable: Float64Array,
  notes: NoteBook,
  { timeFormat }: Site,
): void {
  const head = (logs[0] as OpenLog).head;
  const place = `${head.file}:${head.headerLine + 1}`;
  const empty = [...new Set(signal.filter((column) => usable[column] === 0))].map((column) => names[column] as string);
  const others = unwanted.size > 0 ? `; the log has readings of ${listed([...unwanted])}` : '';
  if (rows === 0) {
    const [said] = notes.list(1).filter(({ line, what }) => line > head.headerLine && !what.startsWith('times were'));
    const why = said === undefined ? '' : `; line ${said.line}: ${said.what}`;
    const format = timeFormat === undefined ? '' : `; timeFormat is ${quoted(timeFormat)}`;
    throw new UsageError(`${place}: no line gives a sample${why}${others}${format}`);
  }
  if (empty.length === new Set(signal).size) {
    throw new UsageError(`${place}: every value of ${listed(empty)} is missing${others}`);
  }
  for (const name of empty) notes.note(head.file, head.headerLine, 'every value is missing in column', { found: name });
}
