import { describe, expect, it } from 'vitest';
import { day } from '../columns/index.js';
import { dropFarTimes } from './farTimes.js';
import { noteBook } from './inputNotes.js';
import { rowWindow } from './rowWindow.js';

const start = Date.UTC(2027, 0, 4);
const stretch = (from: number, rows: number) => Array.from({ length: rows }, (_, row) => from + row * 60_000);

function left(times: readonly number[], whole = true, lastLeft = Number.NEGATIVE_INFINITY): number[] {
  const window = rowWindow(0, times.length);
  window.time.set(times);
  window.count = times.length;
  window.disordered = times.some((time, row) => row > 0 && time <= (times[row - 1] ?? time));
  window.lastLeft = lastLeft;
  const notes = noteBook();
  const dropped = dropFarTimes(window, 'a.csv', notes, whole);
  expect(notes.list(1).reduce((sum, { lines }) => sum + lines, 0)).toBe(dropped);
  return [...window.time.subarray(0, window.count)];
}

describe('dropFarTimes', () => {
  const good = stretch(start, 200);
  it('a clock that was not yet set', () => expect(left([...stretch(0, 5), ...good])).toEqual(good));
  it('a line of 2099 in the middle', () =>
    expect(left([...good.slice(0, 90), Date.UTC(2099, 0, 1), ...good.slice(90)])).toEqual(good));
  it('a wrong line at the end', () => expect(left([...good, 0])).toEqual(good));
  it('years of silence are kept: both sides are logs', () => {
    const both = [...good, ...stretch(start + 800 * day, 200)];
    expect(left(both)).toEqual(both);
  });
  it('a log of few lines is not dropped', () => {
    const few = [...stretch(start, 3), ...stretch(start + 800 * day, 3)];
    expect(left(few)).toEqual(few);
  });
  it('what is at the edge of a window waits for its neighbours', () => {
    const edge = [...good, Date.UTC(2099, 0, 1)];
    expect(left(edge, false)).toEqual(edge);
    const after = [...stretch(start + 800 * day, 5), ...stretch(start + 1600 * day, 200)];
    expect(left(after, true, start)).toEqual(after);
  });
});
