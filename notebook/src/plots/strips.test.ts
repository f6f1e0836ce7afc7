import { describe, expect, it } from 'vitest';
import type { NumberedFinding } from '../bench/reading.js';
import { strips } from './strips.js';

const finding = (number: number, start: number, end: number): NumberedFinding => ({
  number,
  beam: 'a',
  cause: 'obstruction',
  start,
  end,
  ongoing: false,
  confidence: 1,
  severity: 'note',
  summary: '',
  evidence: [],
  action: '',
  settles: '',
});

describe('strips', () => {
  it('uses a new row only where bars would cover each other', () => {
    const rows = strips([finding(1, 0, 10), finding(2, 5, 20), finding(3, 12, 30)], () => 1).map(({ row }) => row);
    expect(rows).toEqual([0, 1, 0]);
  });

  it('leaves room for the name of a short one', () => {
    expect(strips([finding(1, 0, 0), finding(2, 3, 3)], () => 5).map(({ row }) => row)).toEqual([0, 1]);
  });
});
