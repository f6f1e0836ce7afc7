import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { at, diagnosed, hourOf, left, measured, recordOf, rise, stated } from '../../../../../tests/diagnosis/kit.js';
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

/** Smoke-like findings of a log of 16 days, a sample a minute, and the one that begins about an instant. */
const smokes = (loss: (t: number) => number) =>
  stated(diagnosed(recordOf((t) => left(loss(t)), { days: 16, intervalSeconds: 60 })), 'smoke-like');
const about = (begins: number, loss: (t: number) => number) => {
  const one = smokes(loss).find(({ start }) => Math.abs(start - begins) < 30 * minute);
  if (one === undefined) throw new Error('no smoke is told');
  return one;
};
/** Growth of so many dB over twenty minutes that begins to clear after ten more and takes so long. */
const growth = (begins: number, most: number, clears: number) => (t: number) =>
  most * rise(t, begins, begins + 20 * minute) * (1 - rise(t, begins + 30 * minute, begins + 30 * minute + clears));
const begins = at(8, 11);
/** Sharp dips for six minutes at an hour of some days. */
const dipsAt = (hourOfDay: number, days: readonly number[]) => (t: number) =>
  days.some((d) => t >= at(d, hourOfDay) && t < at(d, hourOfDay + 0.1)) ? 1 : 0;
const others = [1, 2, 4, 5, 11, 13];
const dipsCounted = 'dips about this hour on other days, in 30 days';
const clearsWithin = 'time to clear, at most';

describe('signs of a growth in a log', () => {
  /** The growth of an hour's clearing, and other loss beside it. */
  const beside = (other: (t: number) => number, clears = 60 * minute) => {
    const own = growth(begins, 0.5, clears);
    return about(begins, (t) => own(t) + other(t));
  };
  it.each([
    [12, 6],
    [13.5, 6],
    [15.5, 0],
    [20, 0],
  ])('of the dips at %f h on other days those within three hours count', (hourOfDay, counted) =>
    expect(measured(beside(dipsAt(hourOfDay, others)), dipsCounted)).toBe(counted),
  );
  it('the hours about midnight are neighbours', () => {
    const late = at(8, 23);
    const own = growth(late, 0.5, 30 * minute);
    const found = about(late, (t) => own(t) + dipsAt(0.9, [1, 2, 4, 5, 11, 13])(t));
    expect(measured(found, dipsCounted)).toBe(6);
  });
  it('fire signals of other days are no habit that speaks against smoke', () => {
    const fires = [3, 5, 12].map((d) => growth(at(d, 12), 4, 90 * minute));
    const found = beside((t) => fires.reduce((sum, one) => sum + one(t), 0));
    expect(measured(found, dipsCounted)).toBe(0);
  });
  it('tells how long it took to clear, an object that crosses it or not; not where it has not cleared', () => {
    const alone = measured(
      beside(() => 0),
      clearsWithin,
    );
    expect(alone).toBeGreaterThan(20 * 60);
    expect(alone).toBeLessThan(60 * 60);
    const stays = about(begins, (t) => 0.5 * rise(t, begins, begins + 20 * minute));
    expect(stays.evidence.map(({ measure }) => measure)).not.toContain(clearsWithin);
  });
  it('the sample in which a growth amid a night of mist began to clear belongs to the time that it took', () => {
    const misty = (t: number) => 0.5 * rise(hourOf(t), 2.5, 5) * (1 - rise(hourOf(t), 6, 8.5));
    const night = at(8, 5);
    const puff = (t: number) => (t > night + 20 * minute ? 0 : 0.8 * rise(t, night, night + 20 * minute));
    // The median over three samples sees the fall two after the top, which stands a sample before its own.
    expect(
      measured(
        about(night, (t) => misty(t) + puff(t)),
        clearsWithin,
      ),
    ).toBe(4 * 60);
  });
  it('is as sure as they let it be: one that clears slowly above one that is soon gone, and that above one of many dips', () => {
    const [slow, gone, many] = [
      beside(dipsAt(20, others), 240 * minute),
      beside(dipsAt(20, others), 20 * minute),
      beside(dipsAt(12, others), 20 * minute),
    ];
    expect(slow.confidence).toBeGreaterThan(gone.confidence);
    expect(gone.confidence).toBeGreaterThan(many.confidence);
    expect([slow, gone, many].map(({ severity }) => severity)).toEqual(['watch', 'watch', 'watch']);
  });
  it('law: a fire signal never makes the same growth less likely', () => {
    const dirty = (slow: number) =>
      about(begins, (t) => -10 * Math.log10(10 ** (-slow / 10) - 0.05 * rise(t, begins, begins + 20 * minute)));
    expect(dirty(1.6).confidence).toBeGreaterThanOrEqual(dirty(1.4).confidence);
    expect(dirty(1.75).confidence).toBeGreaterThanOrEqual(dirty(1.4).confidence);
  });
});
