import { describe, expect, it } from 'vitest';
import { inputText } from './inputText.js';

describe('inputText', () => {
  it('names line, file and how many are alike', () => {
    const notes = [
      { line: 52, lines: 1, what: 'not a number: "abc"' },
      { line: 9, lines: 3, what: 'doubled', file: 'b.csv' },
    ];
    expect(inputText({ lines: 2000, dropped: 4, notes }, 80).split('\n')).toEqual([
      'Input: 2 000 lines, 4 dropped.',
      '  line 52: not a number: "abc"',
      '  b.csv:9: doubled (3 lines)',
    ]);
  });
  it('counts what it does not show', () => {
    const notes = Array.from({ length: 20 }, (_, at) => ({ line: at, lines: 1, what: 'x' }));
    const told = inputText({ lines: 21, dropped: 0, notes }, 80).split('\n');
    expect(told).toHaveLength(14);
    expect(told.at(0)).toBe('Input: 21 lines, none dropped.');
    expect(told.at(-1)).toBe('  and 8 more notes: --json lists all');
  });
});
