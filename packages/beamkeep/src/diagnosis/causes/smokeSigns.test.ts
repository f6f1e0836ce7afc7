import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { at, diagnosed, left, measured, recordOf, rise, stated } from '../../../../../tests/diagnosis/kit.js';
import { day, minute } from '../../columns/index.js';
import { smokeLikelihood } from './smokeSigns.js';

const signs = fc.record({
  lost: fc.double({ min: 0.03, max: 1, noNaN: true }),
  clearing: fc.double({ min: 1000, max: day, noNaN: true }),
  dipsAtThatHour: fc.nat(200),
});

describe('smokeLikelihood', () => {
  it('law: deeper, slower to clear and with fewer dips at that hour is never less likely', () =>
    fc.assert(
      fc.property(signs, signs, (a, b) => {
        const more = {
          lost: Math.max(a.lost, b.lost),
          clearing: Math.max(a.clearing, b.clearing),
          dipsAtThatHour: Math.min(a.dipsAtThatHour, b.dipsAtThatHour),
        };
        expect(smokeLikelihood(more)).toBeGreaterThanOrEqual(smokeLikelihood(a));
      }),
      { seed: 31 },
    ));
  it('a lone growth to 15 % that clears in half an hour is smoke as often as not', () => {
    expect(smokeLikelihood({ lost: 0.15, clearing: 30 * minute, dipsAtThatHour: 0 })).toBeCloseTo(0.5, 12);
    expect(smokeLikelihood({ lost: 0.15, clearing: 30 * minute, dipsAtThatHour: 2 })).toBeCloseTo(0.25, 12);
    expect(smokeLikelihood({ lost: 0.15, clearing: 120 * minute, dipsAtThatHour: 0 })).toBeCloseTo(2 / 3, 12);
  });
});

describe('signs of a growth in a log', () => {
  /** One growth on day 8 at eleven, gone within so long, and a sharp dip at some hour of six other days. */
  const found = (clears: number, dipsAt: number) => {
    const begins = at(8, 11);
    const grown = (t: number) =>
      0.5 * rise(t, begins, begins + 20 * minute) * (1 - rise(t, begins + 30 * minute, begins + 30 * minute + clears));
    const dips = (t: number) =>
      [1, 2, 4, 5, 11, 13].some((d) => t >= at(d, dipsAt) && t < at(d, dipsAt + 0.1)) ? 2 : 0;
    const all = stated(
      diagnosed(recordOf((t) => left(grown(t) + dips(t)), { days: 16, intervalSeconds: 60 })),
      'smoke-like',
    );
    const one = all.find(({ start }) => Math.abs(start - begins) < 30 * minute);
    if (one === undefined) throw new Error('no smoke is told');
    return one;
  };
  it('counts the dips that come at its hours on other days, and no others', () => {
    expect(measured(found(60 * minute, 12), 'dips about this hour on other days')).toBe(6);
    expect(measured(found(60 * minute, 20), 'dips about this hour on other days')).toBe(0);
  });
  it('tells how long it took to clear', () => {
    const clearing = measured(found(60 * minute, 20), 'time to clear, a day at most');
    expect(clearing).toBeGreaterThan(20 * 60);
    expect(clearing).toBeLessThan(60 * 60);
  });
  it('is as sure as they let it be: a lone one that hangs above one that is soon gone, and that above one of many dips', () => {
    const [hangs, gone, many] = [found(240 * minute, 20), found(20 * minute, 20), found(20 * minute, 12)];
    expect(hangs.confidence).toBeGreaterThan(gone.confidence);
    expect(gone.confidence).toBeGreaterThan(many.confidence);
    expect(new Set([hangs, gone, many].map(({ severity }) => severity))).toEqual(new Set(['watch']));
  });
});
