import { describe, expect, it } from 'vitest';
import { labels } from './proofFigure.js';

const at = (second: number, row: number, verdict: 'pass' | 'fail' | 'not shown' = 'pass') => ({
  start: new Date(Date.UTC(2027, 0, 20, 11, 30, second)).toISOString(),
  verdict,
  row,
});

describe('labels', () => {
  it('steps that begin together share a place, a failed one is named', () => {
    expect(labels([at(0, 0), at(30, 1, 'fail'), at(50, 6), at(50, 7, 'not shown')], 5000)).toEqual([
      { start: at(0, 0).start, failed: false, text: '1' },
      { start: at(30, 1).start, failed: true, text: '2 FAIL' },
      { start: at(50, 6).start, failed: false, text: '7, 8' },
    ]);
  });

  it('loses no step', () => {
    const steps = Array.from({ length: 9 }, (_, row) => at(row, row));
    expect(
      labels(steps, 2500)
        .map(({ text }) => text)
        .join(', '),
    ).toBe('1, 2, 3, 4, 5, 6, 7, 8, 9');
  });
});
