import { describe, expect, it } from 'vitest';
import { RawRows } from './rawRows.js';

const start = Date.UTC(2027, 0, 4);

function filled(rows: number, pieces: number): RawRows {
  const time = Float64Array.from({ length: rows }, (_, row) => start + row * 1000);
  const a = Float64Array.from({ length: rows }, (_, row) => row / 10);
  const b = Float64Array.from({ length: rows }, (_, row) => (row % 3 === 0 ? Number.NaN : Math.sin(row)));
  const raw = new RawRows(2);
  for (let from = 0; from < rows; from += pieces) raw.add(time, [a, b], from, Math.min(rows, from + pieces));
  return raw;
}

describe('RawRows', () => {
  it('gives back every row, however it came', () => {
    for (const pieces of [7, 8192, 30_000]) {
      const raw = filled(20_000, pieces);
      const times = raw.times();
      expect(times.length).toBe(20_000);
      expect(times[19_999]).toBe(start + 19_999_000);
      const { time, value } = raw.usable(1, times);
      expect(value.length).toBe(20_000 - 6667);
      expect([time[0], value[0], time[13_332]]).toEqual([start + 1000, Math.sin(1), start + 19_999_000]);
    }
  });
  it('shares the times of a column without gaps', () => {
    const raw = filled(100, 100);
    const times = raw.times();
    expect(raw.usable(0, times).time).toBe(times);
    expect(raw.usable(0, times).value[99]).toBe(9.9);
  });
  it('lets go of what it gives away', () => {
    const raw = filled(10_000, 100);
    let rows = 0;
    for (const block of raw.takeRows()) rows += block.count;
    expect([rows, raw.count]).toEqual([10_000, 0]);
  });
});
