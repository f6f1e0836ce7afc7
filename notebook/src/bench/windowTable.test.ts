import { describe, expect, it } from 'vitest';
import { testTrace } from './testTrace.js';
import { windowTable } from './windowTable.js';

describe('windowTable', () => {
  it('tells least, mean and greatest of equal stretches', () => {
    const table = windowTable(testTrace([0, 1, 2, 3], [1, 0.5, 0.75, 0.25]), { from: 0, to: 4 }, 2);
    expect(table).toEqual([
      { from: 0, to: 2, low: 0.5, middle: 0.75, high: 1 },
      { from: 2, to: 4, low: 0.25, middle: 0.5, high: 0.75 },
    ]);
  });

  it('a stretch without samples has no numbers, and the last sample belongs to the last stretch', () => {
    const [first, second] = windowTable(testTrace([10], [0.5]), { from: 0, to: 10 }, 2);
    expect(first?.low).toBeNaN();
    expect(first?.middle).toBeNaN();
    expect(second?.high).toBe(0.5);
  });
});
