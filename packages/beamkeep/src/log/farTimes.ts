import { day } from '../columns/index.js';
import type { NoteBook } from './inputNotes.js';
import type { RowWindow } from './rowWindow.js';

/*
 * Times that cannot be true: a logger whose clock lost its battery writes some lines of 1970 or 2000 before it is set,
 * and a bit gone wrong makes one line of 2099. Such lines would stretch the log over decades. They are known by being
 * few, close together, and more than a year from the lines around them in the file.
 */

/** Further from the lines around it than this no line of a log is [ms]. */
const far = 366 * day;
/** Most lines in a row that are held for wrong. */
const most = 100;
/** Longest stretch of time that they cover [ms]. */
const longest = day;
/** So many times more lines must stand on the other side, where there is only one. */
const outweighs = 10;

/**
 * Drops rows whose time lies years from the lines around them. Rows are in order of arrival.
 *
 * @param whole whether these are all rows of the file: then those at its end have no lines behind them
 * @returns number of rows dropped
 */
export function dropFarTimes(window: RowWindow, file: string, notes: NoteBook, whole: boolean): number {
  const { time, count } = window;
  if (!window.disordered && (time[count - 1] as number) - (time[0] as number) <= far) return 0;
  const wrong = new Uint8Array(count);
  const first = !Number.isFinite(window.lastLeft);
  let dropped = 0;
  const drop = (from: number, to: number) => {
    wrong.fill(1, from, to);
    dropped += to - from;
  };
  let from = 0;
  let before = 0;
  for (let row = 1; row <= count; row++) {
    const together = row < count && Math.abs((time[row] as number) - (time[row - 1] as number)) <= far;
    if (together) continue;
    if (row === count && from === 0) break;
    // Rows `from` to `row` stand together, and far from those on either side.
    const size = row - from;
    const span = Math.abs((time[row - 1] as number) - (time[from] as number));
    const few = size <= most && span <= longest;
    const weighed =
      from === 0
        ? first && count - row >= outweighs * size
        : row === count
          ? whole && before >= outweighs * size
          : true;
    if (few && weighed) drop(from, row);
    else before = size;
    from = row;
  }
  if (dropped === 0) return 0;
  const kind = 'the time lies years from the lines around: dropped';
  for (let row = 0; row < count; row++) if (wrong[row] === 1) notes.note(file, window.line[row] as number, kind);
  keepRows(window, wrong);
  return dropped;
}

/** Closes up over the rows marked. */
function keepRows(window: RowWindow, wrong: Uint8Array): void {
  const { time, line, values, width, capacity, count } = window;
  let kept = 0;
  for (let row = 0; row < count; row++) {
    if (wrong[row] === 1) continue;
    time[kept] = time[row] as number;
    line[kept] = line[row] as number;
    for (let c = 0; c < width; c++) values[c * capacity + kept] = values[c * capacity + row] as number;
    kept++;
  }
  window.count = kept;
}
