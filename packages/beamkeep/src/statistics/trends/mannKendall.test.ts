import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { mannKendall, mannKendallTail } from './mannKendall.js';

describe('mannKendall', () => {
  it('law: s counts rising less falling pairs', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: 0, max: 9 }), { maxLength: 40 }), (values) => {
        let s = 0;
        values.forEach((later, j) => {
          for (const earlier of values.slice(0, j)) s += Math.sign(later - earlier);
        });
        expect(mannKendall(values).s).toBe(s);
      }),
      { seed: 55 },
    );
  });
  it('few values without ties: the chance is exact', () => {
    expect(mannKendall([1, 2, 3]).p).toBeCloseTo(2 / 6, 15);
    expect(mannKendall([2, 1]).p).toBe(1);
  });
  it('leaves missing values out', () => expect(mannKendall([1, Number.NaN, 2, 3])).toMatchObject({ s: 3, n: 3 }));
  it('nothing to compare tends nowhere', () => {
    expect(mannKendall([])).toMatchObject({ s: 0, z: 0, p: 1, n: 0 });
    expect(mannKendall([5, 5, 5])).toMatchObject({ s: 0, variance: 0, z: 0, p: 1 });
  });
  it('law: the tail falls from 1 to the one order that rises throughout', () => {
    expect(mannKendallTail(6, -15)).toBeCloseTo(1, 15);
    expect(mannKendallTail(6, 15)).toBeCloseTo(1 / 720, 15);
    expect(mannKendallTail(6, 16)).toBe(0);
  });
});
