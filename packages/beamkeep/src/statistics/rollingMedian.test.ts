import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { median } from './median.js';
import { rollingMedian } from './rollingMedian.js';

describe('rollingMedian', () => {
  it('law: the median of each window, missing rows, ties and both ends included', () => {
    const row = fc.oneof(fc.integer({ min: -2, max: 2 }), fc.constant(Number.NaN), fc.constantFrom(-0, Infinity));
    fc.assert(
      fc.property(fc.array(row, { maxLength: 60 }), fc.integer({ min: 1, max: 70 }), (values, window) => {
        const back = Math.floor(window / 2);
        const slow = values.map((_, i) => median(values.slice(Math.max(0, i - back), i - back + window)));
        expect([...rollingMedian(values, window)].map((v) => v + 0)).toEqual(slow.map((v) => v + 0));
      }),
      { seed: 6 },
    );
  });
  it('says what must change', () => {
    expect(() => rollingMedian([1], 2.5)).toThrow('window 2.5 must be a whole number of rows');
    expect(() => rollingMedian([1], 0)).toThrow('window 0');
  });
});
