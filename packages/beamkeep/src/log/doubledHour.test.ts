import { describe, expect, it } from 'vitest';
import { clockStretch } from '../clocks/index.js';
import { hour, minute } from '../columns/index.js';
import { resolveDoubledHours } from './doubledHour.js';
import { noteBook } from './inputNotes.js';
import { rowWindow } from './rowWindow.js';

const zone = 'Europe/Lisbon';
const change = Date.UTC(2027, 9, 31, 1); // From 02:00 back to 01:00.
const stretch = clockStretch(zone, change + 30 * minute);

/** Minutes of the clock after 00:00 local, resolved to minutes after 00:00 local by the first count. */
function resolved(clock: readonly number[]): { minutes: number[]; told: string | undefined } {
  const window = rowWindow(0, clock.length);
  const start = change - 2 * hour;
  const doubled: { row: number; stretch: typeof stretch }[] = [];
  clock.forEach((minutes, row) => {
    const inside = minutes >= 60 && minutes < 120;
    window.time[row] = start + minutes * minute + (minutes >= 120 ? hour : 0);
    if (inside) doubled.push({ row, stretch });
  });
  window.count = clock.length;
  const notes = noteBook();
  resolveDoubledHours({ doubled }, window, 'a.csv', zone, notes);
  const minutes = [...window.time].map((time) => (time - start) / minute);
  return { minutes, told: notes.list(1)[0]?.what };
}

describe('resolveDoubledHours', () => {
  it('a step back begins the second time', () => {
    expect(resolved([45, 60, 75, 90, 105, 60, 75, 90, 105, 120]).minutes).toEqual([
      45, 60, 75, 90, 105, 120, 135, 150, 165, 180,
    ]);
  });
  it('the same reading twice is a doubled line, or the second time of an hourly log', () => {
    expect(resolved([50, 60, 60, 70, 80, 90, 100, 110, 60, 70]).minutes).toEqual([
      50, 60, 60, 70, 80, 90, 100, 110, 120, 130,
    ]);
    expect(resolved([30, 90, 90, 150]).minutes).toEqual([30, 90, 150, 210]);
  });
  it('without a step back the hour without samples is put where the largest hole is', () => {
    expect(resolved([50, 60, 70, 80, 90, 100, 110, 120]).minutes).toEqual([50, 60, 70, 80, 90, 100, 110, 180]);
    const { minutes, told } = resolved([0, 60, 70, 80, 90, 100, 110, 120]);
    expect(minutes).toEqual([0, 120, 130, 140, 150, 160, 170, 180]);
    expect(told).toContain('read as the second');
  });
});
