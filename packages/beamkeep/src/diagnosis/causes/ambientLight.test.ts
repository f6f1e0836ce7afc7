import { describe, expect, it } from 'vitest';
import {
  at,
  chanceOf,
  dayOf,
  diagnosed,
  hourOf,
  left,
  measured,
  normalOf,
  recordOf,
  stated,
  theOne,
} from '../../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../../tests/diagnosis/typical.js';
import { minute } from '../../columns/index.js';

describe('ambient-light', () => {
  it('is one spell of the sunny days, with the change and its solar hour', () => {
    const found = theOne(diagnosed(typical['ambient-light']()), 'ambient-light');
    expect(found.episodes).toHaveLength(23);
    expect(Math.abs(found.start - at(0, 16.1))).toBeLessThan(10 * minute);
    expect(Math.abs(found.end - at(29, 17.2))).toBeLessThan(10 * minute);
    expect(measured(found, 'change, median of the days')).toBeCloseTo(8, 0);
    expect(measured(found, 'solar time')).toBeCloseTo(16.65, 0);
    expect(measured(found, 'share of raised levels')).toBe(1);
    expect([found.severity, found.ongoing]).toEqual(['note', false]);
  });
  it('knows lamps, on and off at the same minute', () => {
    const lamps = recordOf((t) => (dayOf(t) % 7 < 5 && hourOf(t) >= 7 && hourOf(t) < 9 ? 1.05 : 1), { days: 30 });
    const found = theOne(diagnosed(lamps), 'ambient-light');
    expect(found.start).toBe(at(0, 7));
    // The fit of the daily cycle takes a part of what comes every working day.
    expect(measured(found, 'change, median of the days')).toBeGreaterThan(3.5);
    expect(measured(found, 'change, median of the days')).toBeLessThan(5.5);
  });
  it('knows a receiver that the sun blinds', () => {
    const blind = recordOf((t) => (dayOf(t) % 4 < 3 && hourOf(t) >= 16 && hourOf(t) < 17 ? 0.8 : 1), { days: 30 });
    expect(measured(theOne(diagnosed(blind), 'ambient-light'), 'share of raised levels')).toBe(0);
  });
  describe('that comes through a flickering window, at its hour', () => {
    const flickers = (raised: number, moves = 0, wavers = 0, lasts = 0.7) =>
      diagnosed(
        recordOf(
          (t) => {
            const begin = 13 + moves * dayOf(t) + wavers * chanceOf(dayOf(t), 7);
            const lit = dayOf(t) % 3 > 0 && hourOf(t) >= begin && hourOf(t) < begin + lasts;
            return lit ? 1 + raised + 0.06 * normalOf(Math.floor(t / minute), 3) : 1;
          },
          { days: 15, intervalSeconds: 60 },
        ),
      );
    it('roughens the level and raises it: no electrical noise', () => {
      const found = theOne(flickers(0.03), 'ambient-light');
      expect(found.episodes?.length).toBeGreaterThanOrEqual(7);
      expect(measured(found, 'solar time')).toBeCloseTo(13.35, 0);
      expect(stated(flickers(0.03), 'electrical-noise')).toEqual([]);
    });
    it('is light where the mean stays, if its hour moves with the season as no timer does', () => {
      expect(stated(flickers(0, 2 / 60), 'ambient-light')).toHaveLength(1);
      expect(stated(flickers(0, 2 / 60), 'electrical-noise')).toEqual([]);
    });
    it('is electrical noise where the mean and the hour stay, or the hour but wavers, or it lasts a shift', () => {
      for (const of of [flickers(0), flickers(0, 0, 0.2), flickers(0, 2 / 60, 0, 8)])
        expect(stated(of, 'ambient-light')).toEqual([]);
      expect(stated(flickers(0), 'electrical-noise').length).toBeGreaterThan(0);
    });
  });
  describe('that blinds the receiver behind clouds', () => {
    const dips = (begin: (date: number) => number) =>
      diagnosed(
        recordOf(
          (t) => {
            const hours = hourOf(t) - begin(dayOf(t));
            return hours >= 0 && hours < 0.5 ? 0.9 - 0.5 * chanceOf(Math.floor(t / (10 * minute)), 3) : 1;
          },
          { days: 20, intervalSeconds: 600 },
        ),
      );
    it('takes the level down unevenly, at its hour: no object in the path', () => {
      const found = dips(() => 16);
      expect(measured(theOne(found, 'ambient-light'), 'share of raised levels')).toBe(0);
      expect(stated(found, 'obstruction')).toEqual([]);
    });
    it('is not stated of what comes in some hour or other, nor does it take away what may be smoke', () => {
      expect(
        stated(
          dips((date) => 8 + 9 * chanceOf(date, 5)),
          'ambient-light',
        ),
      ).toEqual([]);
      expect(
        stated(
          dips(() => 16),
          'smoke-like',
        ).length,
      ).toBeGreaterThan(0);
    });
  });
  it.each(['process-aerosol', 'obstruction'] as const)('is not stated of %s', (other) =>
    expect(stated(diagnosed(typical[other]()), 'ambient-light')).toEqual([]),
  );
  it('keeps to its hour from day to day: what is raised in some hour or other of the day is not stated', () => {
    // A quarter of an hour each day, somewhere in four hours.
    const begins = (date: number): number => 12 + 4 * chanceOf(date, 8);
    const raised = (t: number): number => {
      const hours = hourOf(t) - begins(dayOf(t));
      return hours >= 0 && hours < 0.25 ? 1.06 : 1;
    };
    expect(stated(diagnosed(recordOf(raised, { days: 30 })), 'ambient-light')).toEqual([]);
    const kept = (t: number): number => {
      // The sun's hour moves by two minutes a day; clouds cut off up to half of it.
      const hours = hourOf(t) - 13 - dayOf(t) / 30;
      return hours >= 0 && hours < 0.5 - 0.25 * chanceOf(dayOf(t), 8) ? 1.06 : 1;
    };
    const found = theOne(diagnosed(recordOf(kept, { days: 30 })), 'ambient-light');
    expect(measured(found, 'comes back within', 's')).toBeLessThan(360);
  });
  it('knows a sun that clouds leave but a glint of, here and there within its hours, where nothing else raises the level', () => {
    const glint = (t: number): number => Math.floor(6 * (13 + 0.9 * chanceOf(dayOf(t), 8)));
    const sunny = (t: number): number => (Math.floor(6 * hourOf(t)) === glint(t) ? 1.12 : 1);
    const some = (t: number): number =>
      Math.floor(6 * hourOf(t)) === Math.floor(144 * chanceOf(dayOf(t), 9)) ? 1.12 : 1;
    const slow = { days: 20, intervalSeconds: 600 };
    expect(theOne(diagnosed(recordOf(sunny, slow)), 'ambient-light').confidence).toBeGreaterThan(0.5);
    expect(stated(diagnosed(recordOf((t) => Math.max(sunny(t), some(t)), slow)), 'ambient-light')).toEqual([]);
  });
  it('is not stated of dust that comes at its hour, for dust lingers', () => {
    const puff = (t: number): number => {
      const minutes = (hourOf(t) - 10) * 60 - 10 * chanceOf(dayOf(t), 4);
      return minutes < 0 ? 0 : 0.5 * (1 - Math.exp(-minutes / 3)) * Math.exp(-minutes / 25);
    };
    const found = diagnosed(recordOf((t) => left(dayOf(t) % 3 < 2 ? puff(t) : 0), { days: 30 }));
    expect(stated(found, 'ambient-light')).toEqual([]);
    expect(stated(found, 'process-aerosol').length).toBeGreaterThan(0);
  });
});
