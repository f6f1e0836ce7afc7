import { describe, expect, it } from 'vitest';
import { type AimScanOptions, aimScanOf, inDegrees, type NumberRows } from './aimScan.js';

/** A table; the first line is said again and again, so that there are readings enough. */
const table = (names: readonly string[], ...given: readonly string[]): NumberRows => {
  const lines = [...given, ...Array<string>(8).fill(given[0] ?? '')];
  return {
    file: 'scan.csv',
    names,
    rows: lines.map((line, row) => ({ line: row + 2, cells: line.split(',') })),
    numberIn: (cell) => (cell === '' ? Number.NaN : Number.isNaN(Number(cell)) ? undefined : Number(cell)),
  };
};
const options: AimScanOptions = { signalUnit: 'percent', separation: 62 };

describe('aimScanOf', () => {
  it('takes the last column for the level and the others for angles', () => {
    const { axes, angles, power } = aimScanOf(table(['pan', 'tilt', 'reading'], '0.1,0,98', '0.2,0.1,97'), options);
    expect(axes).toEqual(['pan', 'tilt']);
    expect(angles.map((column) => [...column.subarray(0, 2)])).toEqual([
      [0.1, 0.2],
      [0, 0.1],
    ]);
    expect([...power.subarray(0, 2)]).toEqual([98, 97]);
  });
  it('knows the beam by its column, and leaves the time alone', () => {
    const scan = aimScanOf(table(['time', 'b1', 'angle'], 't,98,0.1'), { ...options, signalColumn: 'b1' });
    expect(scan.axes).toEqual(['angle']);
    expect(scan.power[0]).toBe(98);
  });
  it('counts millimetres at the far end and milliradians as degrees', () => {
    expect(inDegrees(1000 * 62 * Math.tan(Math.PI / 180), 'millimetres', 62)).toBeCloseTo(1, 10);
    expect(inDegrees(17.4533, 'milliradians', 62)).toBeCloseTo(1, 5);
  });
  it('turns decibels into power', () =>
    expect(
      aimScanOf(table(['angle', 'level'], '0,-3.0103'), { ...options, signalUnit: 'decibels' }).power[0],
    ).toBeCloseTo(0.5, 5));
  it('tells cells that are no number, by line', () => {
    const { power, notes } = aimScanOf(table(['angle', 'level'], '0,98', '0.1,off', '0.2,'), options);
    expect(notes).toEqual([{ line: 3, what: 'not a number: "off"' }]);
    expect([...power.subarray(0, 3)]).toEqual([98, Number.NaN, Number.NaN]);
  });
  it('asks for readings enough, and says what stands in their place', () => {
    const off = table(['angle', 'level'], 'left,98', '0.1,97', '0.2,96');
    expect(() => aimScanOf(off, options)).toThrow(
      'scan.csv: 2 of its lines hold angle and reading, and a lobe over 1 axis needs 5 or more; line 2: not a number: "left"',
    );
  });
  it('asks for names where they do not tell', () => {
    const wide = table(['a', 'b', 'c', 'd'], '1,2,3,4');
    expect(() => aimScanOf(wide, options)).toThrow('name them with --angles and --level');
    expect(aimScanOf(wide, { ...options, angles: ['b'], level: 'a' }).axes).toEqual(['b']);
    expect(() => aimScanOf(wide, { ...options, angles: ['x'] })).toThrow('no column "x" (--angles)');
    expect(() => aimScanOf(wide, { ...options, angles: ['a', 'b', 'c'] })).toThrow('one or two axes');
  });
  it('a lobe over one axis needs five readings, over two seven', () => {
    const of = (names: readonly string[], line: string, count: number) => {
      const all = table(names, line);
      return () => aimScanOf({ ...all, rows: all.rows.slice(0, count) }, options);
    };
    expect(of(['angle', 'level'], '0,98', 5)).not.toThrow();
    expect(of(['angle', 'level'], '0,98', 4)).toThrow(
      '4 of its lines hold angle and reading, and a lobe over 1 axis needs 5',
    );
    expect(of(['pan', 'tilt', 'level'], '0,0,98', 7)).not.toThrow();
    expect(of(['pan', 'tilt', 'level'], '0,0,98', 6)).toThrow('over 2 axes needs 7 or more');
    expect(of(['angle', 'level'], '0,98', 4)).toThrow(/needs 5 or more$/); // no line is to blame
  });
  it('a reading counts only where each of its angles is there', () => {
    const holes = table(['pan', 'tilt', 'level'], ',0,98', '0,,98', '0,0,');
    expect(() => aimScanOf({ ...holes, rows: holes.rows.slice(0, 3) }, options)).toThrow('0 of its lines');
  });
  it('the name in the option goes before the column of the log, and that before the word level', () => {
    const names = ['b1', 'level', 'angle', 'other'];
    const [line, angles] = ['1,2,3,4', ['angle']];
    const power = (more: object) => aimScanOf(table(names, line), { ...options, angles, ...more }).power[0];
    expect(power({ level: 'other', signalColumn: 'b1' })).toBe(4);
    expect(power({ signalColumn: 'b1' })).toBe(1);
    expect(power({})).toBe(2);
    expect(power({ signalColumn: 'b2' })).toBe(2);
    expect(() => power({ level: 'b2' })).toThrow(
      'scan.csv:1: no column "b2" (--level); it has "b1", "level", "angle", "other"',
    );
  });
  it.each(['time', 'Date', 'TIMESTAMP'])('a column %s is no angle', (name) =>
    expect(aimScanOf(table([name, 'angle', 'level'], '5,0.1,98'), options).axes).toEqual(['angle']),
  );
  it.each(['timer', 'uptime'])('a column %s is one', (name) =>
    expect(aimScanOf(table([name, 'angle', 'level'], '5,0.1,98'), options).axes).toEqual([name, 'angle']),
  );
  it('no angles, and too many, are asked for by name', () => {
    expect(() => aimScanOf(table(['level'], '98'), options)).toThrow(
      'this has "level": name them with --angles and --level',
    );
    expect(() => aimScanOf(table(['a', 'level'], '0,98'), { ...options, angles: [] })).toThrow(
      '--angles names 0 columns',
    );
  });
  it('keeps readings as they were written beside their power', () => {
    const { readings, power } = aimScanOf(table(['angle', 'level'], '0,-3'), { ...options, signalUnit: 'decibels' });
    expect(readings[0]).toBe(-3);
    expect(power[0]).toBeCloseTo(0.501, 3);
  });
  it('angles come in the unit that is told', () => {
    const scan = (angleUnit?: 'milliradians') =>
      aimScanOf(table(['angle', 'level'], '10,98'), { ...options, ...(angleUnit && { angleUnit }) });
    expect(scan().angles[0]?.[0]).toBe(10);
    expect(scan('milliradians').angles[0]?.[0]).toBeCloseTo(0.573, 3);
  });
});
