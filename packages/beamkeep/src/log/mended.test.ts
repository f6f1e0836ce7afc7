import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { noteBook } from './inputNotes.js';
import { mend } from './mended.js';
import { type RowWindow, rowWindow } from './rowWindow.js';

/** A window of rows with one column; rows arrive on lines 2, 3 … */
function windowOf(rows: readonly (readonly [time: number, value: number])[]): RowWindow {
  const window = rowWindow(1, rows.length + 3);
  rows.forEach(([time, value], row) => {
    window.time[row] = time;
    window.values[row] = value;
    window.line[row] = row + 2;
  });
  window.count = rows.length;
  window.disordered = true;
  return window;
}
const held = (window: RowWindow): [number, number][] =>
  Array.from({ length: window.count }, (_, row) => [window.time[row] ?? 0, window.values[row] ?? 0]);

function mended(rows: readonly (readonly [number, number])[]) {
  const window = windowOf(rows);
  const notes = noteBook();
  const mending = mend(window, 'a.csv', notes, Number.NaN, false);
  return { rows: held(window), mending, notes: notes.list(1) };
}

describe('mend', () => {
  it('one line that comes late is one line out of order', () => {
    const { rows, notes } = mended([
      [1, 1],
      [3, 3],
      [4, 4],
      [5, 5],
      [2, 2],
      [6, 6],
    ]);
    expect(rows.map(([time]) => time)).toEqual([1, 2, 3, 4, 5, 6]);
    expect(notes).toEqual([{ line: 6, lines: 1, what: 'out of order: put in its place' }]);
  });
  it('one line of the future does not put all others in the wrong', () => {
    expect(
      mended([
        [1, 1],
        [99, 9],
        [2, 2],
        [3, 3],
      ]).notes,
    ).toEqual([{ line: 3, lines: 1, what: 'out of order: put in its place' }]);
  });
  it('a doubled line is dropped and told', () => {
    const { rows, mending, notes } = mended([
      [1, 1],
      [2, 2],
      [2, 2],
      [3, 3],
    ]);
    expect(rows).toHaveLength(3);
    expect(mending.dropped).toBe(1);
    expect(notes).toEqual([{ line: 4, lines: 1, what: 'doubled line: dropped' }]);
  });
  it('of two readings at one time the first stays', () => {
    const { rows, notes } = mended([
      [1, 1],
      [2, 20],
      [2, 21],
    ]);
    expect(rows).toEqual([
      [1, 1],
      [2, 20],
    ]);
    expect(notes[0]?.what).toBe('another reading at the same time: the first was kept');
  });
  it('lines that fill each other are joined', () => {
    const { rows, mending } = mended([
      [1, Number.NaN],
      [1, 5],
      [2, 6],
    ]);
    expect(rows).toEqual([
      [1, 5],
      [2, 6],
    ]);
    expect(mending.dropped).toBe(0);
  });
  it('what is earlier than all that has left is dropped and told', () => {
    const window = windowOf([
      [11, 1],
      [5, 2],
      [12, 3],
    ]);
    window.lastLeft = 10;
    const notes = noteBook();
    expect(mend(window, 'a.csv', notes, Number.NaN, false).dropped).toBe(1);
    expect(held(window).map(([time]) => time)).toEqual([11, 12]);
    expect(notes.list(1)).toEqual([
      { line: 3, lines: 1, what: 'too far out of order to be put in its place: dropped' },
    ]);
  });
  it('law: times rise, each comes once, with the value that came first', () =>
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 0, max: 40 }), fc.integer({ min: 0, max: 9 })), {
          minLength: 1,
          maxLength: 60,
        }),
        (rows) => {
          const first = new Map<number, number>();
          for (const [time, value] of rows) if (!first.has(time)) first.set(time, value);
          const { rows: after, mending } = mended(rows);
          expect(after).toEqual([...first].sort((a, b) => a[0] - b[0]));
          expect(mending.dropped).toBe(rows.length - after.length);
        },
      ),
      { seed: 8 },
    ));
});
