import { strToU8 } from 'fflate';
import { describe, expect, it } from 'vitest';
import { noteBook } from './inputNotes.js';
import { type LinePlan, nameCell, skipped, timeCell, valueCell } from './linePlan.js';
import { LineReader } from './lineReader.js';
import { rowWindow } from './rowWindow.js';

const wide: LinePlan = {
  separator: 44,
  decimalComma: false,
  actions: Int32Array.of(timeCell, 0, skipped),
  format: 'unix-seconds',
  absent: [],
};

function read(text: string, plan: LinePlan = wide, { plain = true, room = 100, absent = Number.NaN, width = 1 } = {}) {
  const window = rowWindow(width, room);
  const notes = noteBook();
  const reader = new LineReader(plan, window, { file: 'a.csv', zone: 'UTC', notes, absent, plain }, 1);
  const bytes = strToU8(text);
  const end = reader.read(bytes, 0, bytes.length);
  const columns = Array.from({ length: width }, (_, c) => [
    ...window.values.subarray(c * room, c * room + window.count),
  ]);
  return { reader, window, notes: notes.list(1), end, time: [...window.time.subarray(0, window.count)], columns };
}

describe('LineReader', () => {
  it('stops where the window is full, and says where', () => {
    const { end, window, reader } = read('1,5,\n2,6,\n3,7,\n', wide, { room: 2 });
    expect([end, window.count, reader.lines]).toEqual([10, 2, 3]);
  });
  it('numbers are those that JavaScript makes of the text, to the last bit', () => {
    const texts = [
      '0.1',
      '99.95',
      '-0.30',
      '123456.789012',
      '9007199254740991',
      '9007199254740993',
      '0.1234567890123456789',
      '1e-7',
    ];
    const { columns } = read(texts.map((text, row) => `${row + 1},${text},\n`).join(''));
    expect(columns[0]).toEqual(texts.map(Number));
  });
  it('both ways know the line of each row', () => {
    for (const plain of [true, false]) {
      const { window, reader } = read('1,5,\nx\n2,6,a\n\n3,7,\n', wide, { plain });
      expect([...window.line.subarray(0, 3)]).toEqual([2, 4, 6]);
      expect(reader.dropped).toBe(2);
    }
  });
  it('marks rows that are not later than the one before', () => {
    expect(read('1,5,\n2,6,\n').window.disordered).toBe(false);
    expect(read('2,5,\n2,6,\n').window.disordered).toBe(true);
  });
  it('columns that the file lacks are absent', () => {
    const { columns } = read('1,5,\n', { ...wide, absent: [1] }, { width: 2, absent: Number.POSITIVE_INFINITY });
    expect(columns).toEqual([[5], [Number.POSITIVE_INFINITY]]);
  });
  it('one reading a line: those of one time share a row, names that nobody wants give none', () => {
    const long: LinePlan = {
      ...wide,
      actions: Int32Array.of(timeCell, nameCell, valueCell),
      columnOf: (name) =>
        new Map([
          ['x', 0],
          ['y', 1],
        ]).get(name),
    };
    for (const plain of [true, false]) {
      const { time, columns } = read('1,x,5\n1,y,6\n2,z,9\n2,y,7\n3,x,8\n', long, { width: 2, plain });
      expect(time).toEqual([1000, 2000, 3000]);
      expect(columns).toEqual([
        [5, Number.NaN, 8],
        [6, 7, Number.NaN],
      ]);
    }
  });
});
