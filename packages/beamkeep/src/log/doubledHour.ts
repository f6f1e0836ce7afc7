import type { NoteBook } from './inputNotes.js';
import { hoursInWords, type LineReader } from './lineReader.js';
import type { RowWindow } from './rowWindow.js';

/*
 * The hour that the clocks show twice when daylight saving ends. Its lines were read as of its first time. The order
 * of the lines tells the two apart: where the clock stands back by about the repeated hour, the second time begins.
 *
 *     01:00 01:15 01:30 01:45 | 01:00 01:15 01:30 01:45   02:00
 *        first time            45 minutes back: second time
 *
 * A smaller step back is a doubled or displaced line, unless the log is as slow as the hour itself. Where no step is
 * seen, one of the two is missing: the hour without samples is put where the largest hole is, and that is told.
 */

/** Puts the lines of the second time where they belong: later by what the clocks went back. */
export function resolveDoubledHours(
  reader: Pick<LineReader, 'doubled'>,
  window: RowWindow,
  file: string,
  zone: string,
  notes: NoteBook,
): void {
  const { doubled } = reader;
  reader.doubled = [];
  for (let from = 0; from < doubled.length; ) {
    const stretch = doubled[from]?.stretch;
    if (stretch === undefined) return;
    let to = from;
    const rows: number[] = [];
    for (; doubled[to]?.stretch.from === stretch.from; to++) rows.push(doubled[to]?.row ?? 0);
    from = to;
    const { turn, seen } = secondTime(rows, window, stretch.repeat);
    for (const row of rows.slice(turn)) window.time[row] = (window.time[row] as number) + stretch.repeat;
    const told = seen
      ? 'is shown twice by the clocks: its two times were told apart by the order of lines'
      : `is shown twice by the clocks and nothing tells its two times apart: read as the ${turn === 0 ? 'second' : 'first'}`;
    const first = window.line[rows[0] ?? 0] as number;
    notes.note(file, first, `${hoursInWords(stretch, zone)} ${told}`, { lines: rows.length });
  }
}

/** Where among the rows of a doubled hour its second time begins, and whether a step back of the clock shows it. */
function secondTime(
  rows: readonly number[],
  { time, count, lastLeft }: RowWindow,
  repeat: number,
): { turn: number; seen: boolean } {
  const at = (row: number) => time[row] as number;
  const first = rows[0] ?? 0;
  const last = rows.at(-1) ?? 0;
  const steps = rows.slice(1).map((row, k) => at(row) - at(rows[k] ?? 0));
  const usual = [...steps, ...(first > 0 ? [at(first) - at(first - 1)] : [])]
    .filter((step) => step > 0)
    .sort((a, b) => a - b);
  const interval = usual[usual.length >> 1] ?? repeat;
  let deepest = 0;
  for (let k = 1; k < steps.length; k++) if ((steps[k] as number) < (steps[deepest] as number)) deepest = k;
  const step = steps[deepest] ?? Number.POSITIVE_INFINITY;
  if (step <= -repeat / 2 || (step <= 0 && interval >= repeat / 2)) return { turn: deepest + 1, seen: true };

  // No step back: the hole of the missing time is put at the largest hole there is.
  const before =
    first > 0 ? at(first) - at(first - 1) : Number.isFinite(lastLeft) ? at(first) - lastLeft : Number.POSITIVE_INFINITY;
  const after = last + 1 < count ? at(last + 1) - at(last) - repeat : Number.POSITIVE_INFINITY;
  if (before > 3 * interval && before > after) return { turn: 0, seen: false };
  return { turn: rows.length, seen: false };
}
