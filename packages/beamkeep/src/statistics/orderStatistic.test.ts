import fc from 'fast-check';
import { quickselect } from 'simple-statistics';
import { describe, expect, it } from 'vitest';
import { orderStatistic } from './orderStatistic.js';

const values = fc.array(fc.oneof(fc.integer({ min: -3, max: 3 }), fc.double({ min: -1e6, max: 1e6, noNaN: true })), {
  minLength: 1,
  maxLength: 700,
});

describe('orderStatistic', () => {
  it('law: what the selection of simple-statistics finds, at every rank', () => {
    fc.assert(
      fc.property(values, fc.nat(), (list, any) => {
        const rank = any % list.length;
        const other = [...list];
        quickselect(other, rank);
        expect(orderStatistic(Float64Array.from(list), rank) + 0).toBe((other[rank] as number) + 0);
      }),
      { seed: 4 },
    );
  });
  it('looks at the first values only, where told how many count', () =>
    expect(orderStatistic(Float64Array.of(3, 1, 2, -9, -9), 0.5, 3)).toBe(1.5));
});
