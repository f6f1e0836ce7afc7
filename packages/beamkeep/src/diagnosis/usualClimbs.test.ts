import { describe, expect, it } from 'vitest';
import { at, diagnosed, left, pictured, recordOf, stated, told } from '../../../../tests/diagnosis/kit.js';
import { minute } from '../columns/index.js';
import type { Climb } from './climb.js';
import { usualClimbs } from './usualClimbs.js';

/** A puff that comes in a minute or two and goes in a quarter of an hour [dB]. */
const puff = (t: number, begins: number, dB: number): number => {
  const m = (t - begins) / minute;
  return m < 0 ? 0 : dB * (1 - Math.exp(-m / 2)) * Math.exp(-m / 15);
};

/** Three working days of puffs that run into one another, never alike in number or length. */
const puffs = [
  [2, [8, 8.3, 8.6, 9.2, 9.5, 10.1]],
  [3, [8.2, 8.5, 9.9, 10.2]],
  [4, [8.1, 8.4, 8.7, 9.0, 9.3, 9.6, 9.9, 10.2, 10.5]],
] as const;
const dusty = (t: number): number =>
  puffs.reduce(
    (sum, [d, hours]) => sum + hours.reduce((of, h, k) => of + puff(t, at(d, h), 0.5 + 0.1 * (k % 4)), 0),
    0,
  );

const sampled = { days: 8, intervalSeconds: 60 };

describe('usualClimbs', () => {
  it('knows puffs that run into one another by their like on other days', () => {
    const { climbs, usualClimbs } = pictured(recordOf((t) => left(dusty(t)), sampled));
    expect(climbs.length).toBeGreaterThan(10);
    expect(climbs.filter((c) => !usualClimbs.has(c))).toEqual([]);
    expect(told(diagnosed(recordOf((t) => left(dusty(t)), sampled)))).not.toContain('smoke-like');
  });
  it.each([
    ['grows far more', (t: number) => 8 * puff(t, at(5, 9), 1)],
    [
      'grows far more slowly',
      (t: number) =>
        Math.max(0, Math.min(1, (t - at(5, 9)) / (45 * minute))) *
        Math.exp(-Math.max(0, t - at(5, 9.75)) / (15 * minute)),
    ],
    [
      'stays',
      (t: number) => (t < at(5, 9) ? 0 : t < at(5, 14) ? puff(Math.min(t, at(5, 9) + 4 * minute), at(5, 9), 0.7) : 0),
    ],
    ['comes at another time of the day', (t: number) => puff(t, at(5, 20), 0.7)],
    ['comes an hour before any of its like', (t: number) => puff(t, at(5, 7), 0.7)],
    ['is half as large again as any of its like', (t: number) => puff(t, at(5, 9), 1.25)],
  ])('does not take for usual what %s', (_, smoke) => {
    const log = recordOf((t) => left(dusty(t) + smoke(t)), sampled);
    const found = stated(diagnosed(log), 'smoke-like');
    expect(found.some((f) => f.start < at(6) && f.end > at(5))).toBe(true);
  });
  it('asks for other days: puffs of one day are not usual', () => {
    const once = (t: number) => left([8, 9, 10, 11, 12].reduce((sum, h) => sum + puff(t, at(3, h), 0.6), 0));
    expect(pictured(recordOf(once, sampled)).usualClimbs.size).toBe(0);
  });
  it.each([
    ['knows a growth by its like that fall short of 3 %', 0.2, 1],
    ['lets only smaller growths vouch for none', 0.12, 0],
  ])('%s', (_, dB, usual) => {
    const small = (t: number) => [1, 2, 3, 4].reduce((sum, d) => sum + puff(t, at(d, 9 + d / 4), dB), 0);
    const { climbs, usualClimbs } = pictured(recordOf((t) => left(small(t) + puff(t, at(5, 9.6), 0.27)), sampled));
    expect(climbs).toHaveLength(1);
    expect(climbs.filter((c) => usualClimbs.has(c))).toHaveLength(usual);
  });
  it.each([
    ['knows a growth by puffs that a slow log shows in two samples', 300, 1],
    ['lets no single wild sample vouch for one', 30, 0],
  ])('%s', (_, seconds, usual) => {
    // An eighth of the light is lost for some minutes of four mornings, and once a growth is held.
    const brief = (t: number) =>
      [1, 2, 3, 4].some((d) => t >= at(d, 9 + d / 4) && t < at(d, 9 + d / 4) + 2 * seconds * 1000) ? 0.6 : 0;
    const log = recordOf((t) => left(brief(t) + puff(t, at(5, 9.6), 0.9)), { days: 8, intervalSeconds: 300 });
    const { climbs, usualClimbs } = pictured(log);
    expect(climbs).toHaveLength(1);
    expect(climbs.filter((c) => usualClimbs.has(c))).toHaveLength(usual);
  });
  it('lets no end of a spell of light vouch for a growth', () => {
    // The sun adds a fifth for an hour of each morning: when it goes, the level falls as if smoke had come.
    const sunny = (t: number) => {
      const hours = ((t - at(0)) / (60 * minute)) % 24;
      return hours > 9 && hours < 10 ? 0.25 : 0;
    };
    const log = recordOf((t) => left(puff(t, at(5, 11), 1)) + sunny(t), sampled);
    expect(stated(diagnosed(log), 'smoke-like').some((f) => f.start < at(6) && f.end > at(5))).toBe(true);
  });
  describe('of growths that are given', () => {
    const seconds = 600;
    const log = (level: number) =>
      pictured(recordOf(() => level, { days: 28, intervalSeconds: seconds, noise: 0 })).view;
    const rowOf = (instant: number) => Math.round((instant - at(0)) / (1000 * seconds));
    /** A growth by half a decibel within ten minutes, that has cleared after some hours. */
    const growth = (begins: number, clearsAfter: number, rise = 0.5): Climb => {
      const from = rowOf(begins);
      const cleared = Math.min(28 * 144, from + 1 + rowOf(at(0, clearsAfter)));
      return { from, to: from + 1, rise, lost: 0.11, time: 10 * minute, rows: 1, cleared };
    };
    const nights = [1, 2, 3, 4].map((d) => growth(at(d, 5), 12));
    const neverClears = growth(at(5, 5), Number.POSITIVE_INFINITY);
    it('takes the end of lamps before days off for usual, though their light does not come back', () => {
      const stays = [...nights, neverClears];
      expect(usualClimbs(log(1), stays).has(neverClears)).toBe(true);
      expect(usualClimbs(log(0.95), stays).has(neverClears)).toBe(false);
    });
    it('does not take for usual what but one of many is as large as', () => {
      const lesser = Array.from({ length: 12 }, (_, d) => growth(at(d + 1, 5), 12, d === 6 ? 0.6 : 0.4));
      const large = growth(at(20, 5), 12, 0.8);
      expect(usualClimbs(log(0.95), [...lesser, large]).has(large)).toBe(false);
      expect(usualClimbs(log(0.95), [...lesser, growth(at(15, 5), 12, 0.6), large]).has(large)).toBe(true);
    });
    it('finds few of its like among many as large at other hours', () => {
      const others = Array.from({ length: 1600 }, (_, k) => growth(at(6 + (k % 20), 11 + (k % 9)), 1));
      const few = [0.42, 0.46, 0.54, 0.58].map((dB, d) => growth(at(d + 1, 5), 12, dB));
      const usual = usualClimbs(log(0.95), [...others, ...few]);
      expect(few.filter((c) => usual.has(c))).toEqual(few);
    });
  });
  it('lets none that reached the alarm threshold vouch for another', () => {
    const deep = (t: number) => left(dusty(t) * 5);
    expect(pictured(recordOf(deep, sampled)).usualClimbs.size).toBe(0);
  });
});
