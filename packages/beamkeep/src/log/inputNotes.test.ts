import { describe, expect, it } from 'vitest';
import { noteBook } from './inputNotes.js';

describe('noteBook', () => {
  it('counts equal notes together, from their first line', () => {
    const book = noteBook();
    book.note('a.csv', 9, 'not a number', { found: 'x' });
    book.note('a.csv', 4, 'not a number', { found: 'x' });
    book.note('a.csv', 6, 'empty line', { lines: 3 });
    expect(book.list(1)).toEqual([
      { line: 4, lines: 2, what: 'not a number: "x"' },
      { line: 6, lines: 3, what: 'empty line' },
    ]);
  });
  it('stays small whatever the log holds', () => {
    const book = noteBook();
    for (let line = 2; line < 10_002; line++) book.note('a.csv', line, 'not a number', { found: `x${line}` });
    const list = book.list(1);
    expect(list).toHaveLength(9);
    expect(list.at(-1)).toEqual({ line: 10, lines: 9992, what: 'not a number: others' });
    expect(list.reduce((sum, { lines }) => sum + lines, 0)).toBe(10_000);
  });
  it('names the file where there are several', () => {
    const book = noteBook();
    book.note('b.csv', 2, 'empty line');
    book.note('a.csv', 3, 'empty line');
    expect(book.list(2).map(({ file }) => file)).toEqual(['b.csv', 'a.csv']);
    expect(book.list(1)[0]).not.toHaveProperty('file');
  });
  it('shows nothing of a log that could steer a terminal', () => {
    const book = noteBook();
    book.note('a.csv', 2, 'not a number', { found: '\u001b[31m\u009b\u202e' });
    expect(book.list(1)[0]?.what).toBe('not a number: "\\u001b[31m\\u009b\\u202e"');
  });
});
