import { describe, expect, it } from 'vitest';
import { chanceOf, dayOf, hourOf, left, pictured, recordOf } from '../../../../tests/diagnosis/kit.js';
import { lobe } from '../../../../tests/diagnosis/typical.js';
import { day, hour } from '../columns/index.js';

/** Temperature of a structure, each day with its own swing [degC]. */
const warmth = (t: number): number =>
  15 + (4 + 4 * chanceOf(dayOf(t), 7)) * Math.cos(((hourOf(t) - 15) / 24) * 2 * Math.PI) + 3 * Math.sin(dayOf(t) / 6);

/** A beam whose aim follows the temperature so many hours before: offset and turn a kelvin in half-angles. */
const moving = (offset: number, perKelvin: number, lagHours: number, more = (_: number) => 0) =>
  pictured(
    recordOf((t) => left(lobe(offset + perKelvin * (warmth(t - lagHours * hour) - 15)) + more(t)), {
      days: 40,
      intervalSeconds: 600,
      temperature: warmth,
    }),
  ).heat;

describe('heatOf', () => {
  it.each([
    [0.5, 0.02, 2],
    [0.3, 0.03, 3],
    [0.8, 0.015, 1],
  ])('reads offset %f and movement %f a kelvin of a known quadratic, within its limits', (offset, perKelvin, lag) => {
    const heat = moving(offset, perKelvin, lag);
    expect(heat).toBeDefined();
    if (heat === undefined) return;
    expect(Math.abs(heat.lagHours - lag)).toBeLessThanOrEqual(0.5);
    expect(heat.explained).toBeGreaterThan(0.95);
    const { aim } = heat;
    expect(aim.determined).toBe(true);
    // Where the movement is told from: the middle of the temperature's range.
    const there = offset + perKelvin * (aim.reference - 15);
    expect(aim.offset.low).toBeLessThanOrEqual(there + 0.02);
    expect(aim.offset.high).toBeGreaterThanOrEqual(there - 0.02);
    expect(Math.abs(aim.offset.value / there - 1)).toBeLessThan(0.1);
    expect(Math.abs(aim.movementPerUnit.value / perKelvin - 1)).toBeLessThan(0.1);
  });
  it('is not bent by dirt', () => {
    const heat = moving(0.5, 0.02, 2, (t) => 0.03 * dayOf(t));
    expect(heat?.aim.offset.value).toBeCloseTo(0.5 + 0.02 * ((heat?.aim.reference ?? 15) - 15), 1);
  });
  it('tells the season that a warmer structure makes, and none where the temperature explains nothing', () => {
    const season = moving(0.5, 0.02, 2)?.season ?? new Float64Array();
    expect(Math.max(...season) - Math.min(...season)).toBeGreaterThan(0.2);
  });
  describe('over a season', () => {
    const warm = (t: number): number => warmth(t) - 15 * (dayOf(t) / 90) + 4 * Math.sin(dayOf(t) / 5);
    const seasonOf = (aim: (t: number) => number, dirt: number): number => {
      const record = recordOf((t) => left(lobe(aim(t)) + dirt * dayOf(t)), {
        days: 90,
        intervalSeconds: 900,
        temperature: warm,
      });
      const season = pictured(record).heat?.season ?? new Float64Array();
      return Math.max(...season) - Math.min(...season);
    };
    /** Mean of the five days before: what has lasted for so long has no part in the movement any more. */
    const lasted = (t: number): number => [0.5, 1.5, 2.5, 3.5, 4.5].reduce((sum, d) => sum + warm(t - d * day) / 5, 0);
    it.each([0, 0.02])('takes its part off where the weeks follow as the days do, under dirt of %f dB a day', (dirt) =>
      expect(seasonOf((t) => 0.5 + 0.02 * (warm(t) - 10), dirt)).toBeGreaterThan(0.8),
    );
    it.each([0, 0.02])('takes none off where the structure gives way within days, under dirt of %f dB a day', (dirt) =>
      expect(seasonOf((t) => 0.5 + 0.02 * (warm(t) - lasted(t)), dirt)).toBe(0),
    );
  });
  it('is none without a temperature, and none without a daily cycle to fit', () => {
    expect(pictured(recordOf(() => 1, { days: 40, intervalSeconds: 600 })).heat).toBeUndefined();
    expect(pictured(recordOf(() => 1, { days: 2, temperature: warmth })).heat).toBeUndefined();
  });
});

describe('movedByHeat', () => {
  /** A front on the 20th day takes 9 K off within half an hour, for six days. */
  const front = (t: number): number => warmth(t) - (dayOf(t) >= 20.3 && dayOf(t) < 26.3 ? 9 : 0);
  const steps = (aimAt: (t: number) => number, more = (_: number) => 0) =>
    pictured(
      recordOf((t) => left(lobe(aimAt(t)) + more(t)), { days: 40, intervalSeconds: 600, temperature: front }),
    ).parts.steps.map((s) => Math.sign(s.loss));
  const followsFront = (t: number): number => 0.6 + 0.02 * (front(t - hour) - 15);
  it('a level that follows a front is no step, though it changes within the hour and stays for days', () =>
    expect(steps(followsFront)).toEqual([]));
  it('a knock of a beam that follows the temperature is one', () =>
    expect(steps(followsFront, (t) => (dayOf(t) >= 30 ? 0.3 : 0))).toEqual([1]));
  it('a change at the hour of a front that a still beam makes is one', () =>
    expect(
      steps(
        () => 0,
        (t) => (dayOf(t) >= 20.3 ? 0.3 : 0),
      ),
    ).toEqual([1]));
});
