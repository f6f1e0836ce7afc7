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
});
