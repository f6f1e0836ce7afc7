import type { NoteBook } from './inputNotes.js';
import type { RowWindow } from './rowWindow.js';

/*
 * Rows out of order, put in their place. Which rows are out of place is told by the longest stretch of rows that rise:
 * what is not in it was moved. So one line that comes late is one line, not all those it has missed, and one line of
 * a wrong, far date does not put all others in the wrong. Rows of one time become one: a line told twice is dropped,
 * lines that fill each other's gaps are joined, and where two differ the first stays.
 */

/** How many rows a mending found out of place, and how many it dropped. */
export interface Mending {
  readonly moved: number;
  readonly dropped: number;
}

/**
 * Sorts the rows of a window and makes their times rise strictly.
 *
 * @param absent stands for a value that a line says nothing of
 */
export function mend(window: RowWindow, file: string, notes: NoteBook, absent: number, longForm: boolean): Mending {
  const { count, time, line } = window;
  const inOrder = risingRows(time, count, window.lastLeft);
  let moved = 0;
  for (let row = 0; row < count; row++) {
    if (inOrder[row] === 1) continue;
    moved++;
    if ((time[row] as number) > window.lastLeft) note(notes, file, line[row] as number, longForm);
  }
  const order = sortedRows(time, count, inOrder, moved);
  permute(window, order);
  const dropped = joinEqualTimes(window, file, notes, absent);
  window.disordered = false;
  return { moved, dropped };
}

const note = (notes: NoteBook, file: string, line: number, longForm: boolean) => {
  if (!longForm) notes.note(file, line, 'out of order: put in its place');
};

/** Marks the rows of a longest stretch behind `after` that never falls (Fredman 1975: patience sorting). */
function risingRows(time: Float64Array, count: number, after: number): Uint8Array {
  const before = new Int32Array(count);
  const piles = new Int32Array(count);
  let used = 0;
  for (let row = 0; row < count; row++) {
    const t = time[row] as number;
    if (t <= after) continue;
    let low = 0;
    let high = used;
    if (used > 0 && (time[piles[used - 1] as number] as number) <= t) low = used;
    while (low < high) {
      const middle = (low + high) >>> 1;
      if ((time[piles[middle] as number] as number) <= t) low = middle + 1;
      else high = middle;
    }
    before[row] = low > 0 ? (piles[low - 1] as number) : -1;
    piles[low] = row;
    if (low === used) used++;
  }
  const inOrder = new Uint8Array(count);
  for (let row = used > 0 ? (piles[used - 1] as number) : -1; row >= 0; row = before[row] as number) inOrder[row] = 1;
  return inOrder;
}

/** Rows in order of time, those of one time in order of arrival: the moved ones merged into the others. */
function sortedRows(time: Float64Array, count: number, inOrder: Uint8Array, moved: number): Int32Array {
  const strays = new Int32Array(moved);
  for (let row = 0, at = 0; row < count; row++) if (inOrder[row] === 0) strays[at++] = row;
  strays.sort((a, b) => (time[a] as number) - (time[b] as number) || a - b);
  const order = new Int32Array(count);
  let stray = 0;
  let at = 0;
  for (let row = 0; row < count; row++) {
    if (inOrder[row] === 0) continue;
    for (; stray < moved; stray++) {
      const other = strays[stray] as number;
      const sooner = (time[other] as number) - (time[row] as number);
      if (sooner > 0 || (sooner === 0 && other > row)) break;
      order[at++] = other;
    }
    order[at++] = row;
  }
  for (; stray < moved; stray++) order[at++] = strays[stray] as number;
  return order;
}

function permute(window: RowWindow, order: Int32Array): void {
  const { width, capacity, count } = window;
  const scratch = new Float64Array(count);
  const rearrange = (column: Float64Array | Uint32Array) => {
    for (let row = 0; row < count; row++) scratch[row] = column[order[row] as number] as number;
    column.set(scratch);
  };
  rearrange(window.time.subarray(0, count));
  rearrange(window.line.subarray(0, count));
  for (let c = 0; c < width; c++) rearrange(window.values.subarray(c * capacity, c * capacity + count));
}

/** Makes one row of rows of one time, and drops those that come too late; gives the number of lines dropped. */
function joinEqualTimes(window: RowWindow, file: string, notes: NoteBook, absent: number): number {
  const { width, capacity, count, time, line, values } = window;
  let kept = 0;
  let dropped = 0;
  for (let row = 0; row < count; row++) {
    const t = time[row] as number;
    if (t <= window.lastLeft) {
      dropped++;
      notes.note(file, line[row] as number, 'too far out of order to be put in its place: dropped');
      continue;
    }
    if (kept > 0 && time[kept - 1] === t) {
      let differs = false;
      let fills = false;
      for (let c = 0; c < width; c++) {
        const known = values[c * capacity + kept - 1] as number;
        const other = values[c * capacity + row] as number;
        if (Object.is(known, other) || Object.is(other, absent) || Number.isNaN(other)) continue;
        if (Number.isNaN(known) || Object.is(known, absent)) {
          values[c * capacity + kept - 1] = other;
          fills = true;
        } else differs = true;
      }
      if (differs) notes.note(file, line[row] as number, 'another reading at the same time: the first was kept');
      else if (!fills) notes.note(file, line[row] as number, 'doubled line: dropped');
      if (!fills) dropped++;
      continue;
    }
    if (kept !== row) {
      time[kept] = t;
      line[kept] = line[row] as number;
      for (let c = 0; c < width; c++) values[c * capacity + kept] = values[c * capacity + row] as number;
    }
    kept++;
  }
  window.count = kept;
  return dropped;
}
