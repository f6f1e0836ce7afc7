import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { cellCountTrouble, cellNumber, cellsOf } from './cells.js';

describe('cellsOf', () => {
  it('RFC 4180, 2.5 to 2.7: quotes, separators in quotes, doubled quotes', () => {
    expect(cellsOf('"aaa","b""bb","c,cc"', ',')).toEqual(['aaa', 'b"bb', 'c,cc']);
  });
  it('takes off the blanks around a cell and what stands behind a closing quote', () => {
    expect(cellsOf(' 1 ; "2" % ;3', ';')).toEqual(['1', '2 %', '3']);
  });
  it('a quote inside a cell is only a quote', () => expect(cellsOf('5",6', ',')).toEqual(['5"', '6']));
  it('a quote left open has no cells', () => expect(cellsOf('1,"2', ',')).toBeUndefined());
  it('law: what is quoted comes back', () =>
    fc.assert(
      fc.property(
        fc.array(fc.string({ unit: 'grapheme-ascii', maxLength: 8 }), { minLength: 1, maxLength: 5 }),
        (cells) => {
          const line = cells.map((cell) => `"${cell.replaceAll('"', '""')}"`).join('\t');
          expect(cellsOf(line, '\t')).toEqual(cells.map((cell) => cell.trim()));
        },
      ),
      { seed: 1 },
    ));
});

describe('cellNumber', () => {
  it.each([
    ['35', 35],
    ['35 %', 35],
    ['35%', 35],
    ['-0.5', -0.5],
    ['+3', 3],
    ['.5', 0.5],
    ['5.', 5],
    ['1.5E-2', 0.015],
    ['\u22123', -3],
  ])('%s is %d', (cell, value) => expect(cellNumber(cell, false)).toBe(value));
  it.each(['', 'NaN', 'nan', 'NA', 'null', '%'])('"%s" is missing', (cell) =>
    expect(cellNumber(cell, false)).toBeNaN(),
  );
  it.each(['abc', '-', '.', '0x1F', 'Infinity', '1e309', '1 2', '1_000', '1.2.3', '--1', '1,5'])(
    '"%s" is no number',
    (cell) => expect(cellNumber(cell, false)).toBeUndefined(),
  );
  it('a comma marks decimals only where it separates no cells', () => {
    expect(cellNumber('3,5', true)).toBe(3.5);
    expect(cellNumber('1,234,5', true)).toBeUndefined();
  });
});

describe('cellCountTrouble', () => {
  it('hints at a decimal comma', () => {
    expect(cellCountTrouble(3, 2, ',')).toBe(
      '3 cells where the header has 2 (if the decimal is a comma, separate cells with ";")',
    );
    expect(cellCountTrouble(1, 2, ',')).toBe('1 cell where the header has 2');
    expect(cellCountTrouble(3, 2, ';')).toBe('3 cells where the header has 2');
  });
});
