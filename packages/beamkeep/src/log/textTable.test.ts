import { describe, expect, it } from 'vitest';
import { textTable } from './textTable.js';

describe('textTable', () => {
  it('reads names and rows, and counts lines as an editor does', () => {
    const { names, rows, notes } = textTable('\uFEFFangle,level\r\n0.1,98\r\n\r\n0.2\r\n"0.3",97 %\r\n', 'scan.csv');
    expect(names).toEqual(['angle', 'level']);
    expect(rows).toEqual([
      { line: 2, cells: ['0.1', '98'] },
      { line: 5, cells: ['0.3', '97 %'] },
    ]);
    expect(notes).toEqual([{ line: 4, lines: 1, what: '1 cell where the header has 2' }]);
  });
  it('knows the decimal comma', () => {
    const { rows, numberIn } = textTable('angle;level\n0,1;98\n', 'scan.csv');
    expect(rows[0]?.cells.map(numberIn)).toEqual([0.1, 98]);
    expect(numberIn('NaN')).toBeNaN();
    expect(numberIn('abc')).toBeUndefined();
  });
  it('refuses what is empty or no text', () => {
    expect(() => textTable('', 'scan.csv')).toThrow('scan.csv: the file is empty');
    expect(() => textTable(new Uint8Array(400), 'scan.csv')).toThrow('scan.csv');
  });
});
