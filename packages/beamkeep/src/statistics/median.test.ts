import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { median } from './median.js';

const numbers = fc.array(fc.oneof(fc.integer({ min: -5, max: 5 }), fc.double({ min: -1e6, max: 1e6, noNaN: true })), {
  minLength: 1,
  maxLength: 900,
});

/** The slow, plain way: sort and take the middle. */
function sortedMiddle(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length >>> 1;
  const upper = sorted[half] as number;
  return sorted.length % 2 === 1 ? upper : ((sorted[half - 1] as number) + upper) / 2;
}

describe('median', () => {
  it('law: what sorting gives, ties and long lists included', () => {
    fc.assert(
      fc.property(numbers, (values) => {
        expect(median(values)).toBeCloseTo(sortedMiddle(values), 9);
      }),
      { seed: 1 },
    );
  });
  it('leaves missing values out', () => expect(median([Number.NaN, 3, 1, Number.NaN, 2])).toBe(2));
  it('nothing present gives nothing', () => {
    expect(median([])).toBeNaN();
    expect(median([Number.NaN])).toBeNaN();
  });
  it('keeps an infinite loss', () => expect(median([1, Infinity, Infinity])).toBe(Infinity));
  it('leaves its argument as it was', () => {
    const values = [3, 1, 2];
    median(values);
    expect(values).toEqual([3, 1, 2]);
  });
});
