import { describe, expect, it } from 'vitest';
import { csvCell } from './csvCell.js';

describe('csvCell', () => {
  it('quotes what CSV would take for its own', () => {
    expect(csvCell('a, b')).toBe('"a, b"');
    expect(csvCell('say "so"')).toBe('"say ""so"""');
    expect(csvCell('two\nlines')).toBe('"two\nlines"');
  });

  it.each(['=1+1', '+1', '-1', '@SUM(A1)', '\t=1', '\r=1'])('makes text of %j', (formula) => {
    expect(csvCell(formula).replace(/^"/, '')).toMatch(/^'/);
  });

  it('leaves numbers and plain text alone', () => {
    expect(csvCell(-0.5)).toBe('-0.5');
    expect(csvCell(true)).toBe('true');
    expect(csvCell('dirt')).toBe('dirt');
  });
});
