import { describe, expect, it } from 'vitest';
import {
  at,
  chanceOf,
  dayOf,
  diagnosed,
  hourOf,
  left,
  measured,
  recordOf,
  stated,
  theOne,
  told,
} from '../../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../../tests/diagnosis/typical.js';
import { hour, minute } from '../../columns/index.js';

describe('process-aerosol', () => {
  it('is one spell of the working days, in their hours', () => {
    const found = theOne(diagnosed(typical['process-aerosol']()), 'process-aerosol');
    expect(found.episodes).toHaveLength(22);
    for (const [start, end] of found.episodes ?? []) {
      expect(dayOf(start) % 7).toBeLessThan(5);
      expect(start).toBeGreaterThanOrEqual(at(dayOf(start), 8));
      expect(end).toBeLessThan(at(dayOf(start), 17));
    }
    expect([found.start, found.end]).toEqual([found.episodes?.[0]?.[0], found.episodes?.at(-1)?.[1]]);
    expect(measured(found, 'days')).toBe(22);
    expect(measured(found, 'dips a day')).toBeGreaterThan(1);
    expect(measured(found, 'agreement of the hours, 0 to 1')).toBeGreaterThan(0.7);
  });
  it('stands beside smoke where few days hold puffs that have no like, and takes none of it away', () => {
    // Three puffs on each of two days, each its own in size, each twice as deep or half as deep as the next.
    const begins = [at(3, 8.2), at(3, 10), at(3, 12.4), at(8, 8.1), at(8, 9.5), at(8, 13)];
    const puff = (minutes: number): number =>
      minutes < 0 ? 0 : (1 - Math.exp(-minutes / 2)) * Math.exp(-minutes / 12);
    const depths = [0.6, 1.6, 4, 9, 2.4, 1];
    const loss = (t: number): number =>
      begins.reduce((sum, begin, k) => sum + (depths[k] as number) * puff((t - begin) / 60_000), 0);
    const found = diagnosed(recordOf((t) => left(loss(t)), { days: 14, intervalSeconds: 60 }));
    expect(stated(found, 'smoke-like').length, told(found)).toBeGreaterThanOrEqual(3);
    const dust = theOne(found, 'process-aerosol');
    expect(dust.episodes).toHaveLength(2);
    expect(dayOf(dust.start)).toBe(3);
    expect(dayOf(dust.end)).toBe(8);
  });
  it('is stated of work that goes on round the clock, and not of the same on few of many days', () => {
    // Six ragged puffs a day, at any hour.
    const puff = (minutes: number): number =>
      minutes < 0 ? 0 : (1 - Math.exp(-minutes / 3)) * Math.exp(-minutes / 15);
    const loss = (t: number): number => {
      const begins = at(dayOf(t), 4 * Math.floor(hourOf(t) / 4) + 2.5 * chanceOf(Math.floor(t / (4 * hour)), 4));
      const size = 0.5 + 0.5 * chanceOf(Math.floor(t / (4 * hour)), 5);
      return size * puff((t - begins) / minute) * (0.6 + 0.8 * chanceOf(Math.floor(t / minute), 6));
    };
    const found = (works: (t: number) => boolean) =>
      stated(
        diagnosed(recordOf((t) => left(works(t) ? loss(t) : 0), { days: 28, intervalSeconds: 60 })),
        'process-aerosol',
      );
    expect(found(() => true)).not.toEqual([]);
    expect(found((t) => dayOf(t) % 9 === 1)).toEqual([]);
  });
  it('is less likely where mist comes in the same hours on many more days', () => {
    // Uneven dips that come as quickly as they go.
    const dip = (minutes: number): number => Math.exp(-(((minutes - 40) / 20) ** 2));
    const puffs = (t: number): number =>
      0.5 *
      (0.7 + 0.6 * chanceOf(Math.floor(t / minute), 6)) *
      (dip((hourOf(t) - 3 - 2 * chanceOf(dayOf(t), 4)) * 60) + dip((hourOf(t) - 5.5 - chanceOf(dayOf(t), 5)) * 60));
    const mist = (t: number): number =>
      1.2 * Math.max(0, Math.sin((Math.PI * hourOf(t)) / 9)) ** 2 * (hourOf(t) < 9 ? 1 : 0);
    const sure = (misty: boolean) =>
      diagnosed(recordOf((t) => left(dayOf(t) % 8 === 2 ? puffs(t) : misty ? mist(t) : 0), { days: 40 })).findings.find(
        ({ cause }) => cause === 'process-aerosol',
      )?.confidence ?? 0;
    expect(sure(true)).toBeLessThan(sure(false) - 0.2);
  });
  it('is not stated of two fires on two days', () => {
    const fire = (minutes: number): number => (minutes < 0 ? 0 : Math.min(6, minutes / 2) * Math.exp(-minutes / 40));
    const found = diagnosed(
      recordOf((t) => left(fire((t - at(3, 9)) / 60_000) + fire((t - at(8, 10)) / 60_000)), {
        days: 14,
        intervalSeconds: 60,
      }),
    );
    expect(stated(found, 'smoke-like').length).toBeGreaterThanOrEqual(2);
    expect(stated(found, 'process-aerosol')).toEqual([]);
  });
  it('is not stated of a mount that shakes about the peak while plant runs, whose samples only take light', () => {
    const shaken = (t: number): number =>
      dayOf(t) % 7 < 5 && hourOf(t) > 7 && hourOf(t) < 15
        ? 0.12 * Math.sin(2 * Math.PI * chanceOf(Math.floor(t / 60_000), 6)) ** 2
        : 0;
    const found = diagnosed(recordOf((t) => 1 - shaken(t), { days: 30 }));
    expect(stated(found, 'process-aerosol'), told(found)).toEqual([]);
    const one = theOne(found, 'vibration');
    expect(dayOf(one.start)).toBe(0);
    expect(measured(one, 'likeness to the spread of a swing, 0 to 1')).toBeGreaterThan(0.5);
    expect(stated(found, 'electrical-noise')).toEqual([]);
  });
  it.each(['condensation', 'vibration'] as const)('is not stated of %s', (other) =>
    expect(stated(diagnosed(typical[other]()), 'process-aerosol')).toEqual([]),
  );
});
