import { describe, expect, it } from 'vitest';
import { at, chanceOf, diagnosed, left, pictured, recordOf, rise } from '../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../tests/diagnosis/typical.js';
import { hour, minute } from '../columns/index.js';
import type { Picture } from './picture.js';

/** Kinds of the excursions that lose light, each once. */
const kinds = ({ excursions, kind }: Picture) => [
  ...new Set(excursions.filter((e) => e.depth > 0.03).map((e) => kind.get(e))),
];

describe('sortExcursions', () => {
  it.each([
    ['smoke-like', 'smoke'],
    ['obstruction', 'block'],
    ['condensation', 'film'],
    ['ambient-light', 'light'],
  ] as const)('sorts %s as %s', (cause, kind) => expect(kinds(pictured(typical[cause]()))).toEqual([kind]));
  it('sorts most of process-aerosol as dust', () => {
    const { excursions, kind } = pictured(typical['process-aerosol']());
    expect(excursions.filter((e) => kind.get(e) === 'dust').length / excursions.length).toBeGreaterThan(0.5);
  });
  it('takes a film for no smoke where it grows under the pace of the rule, however rare it is', () => {
    const night = (t: number) => left(1.2 * rise(t, at(6, 1), at(6, 4)) * (1 - rise(t, at(6, 7), at(6, 9))));
    expect(kinds(pictured(recordOf(night, { days: 12 })))).toEqual(['film']);
  });
  it('takes the same for smoke where it doubles on to a peak', () => {
    const doubling = (t: number) => {
      const minutes = (t - at(6, 1)) / minute;
      return left(
        minutes < 0 ? 0 : minutes < 140 ? 1.2 * 2 ** ((minutes - 140) / 25) : 1.2 * Math.exp((140 - minutes) / 40),
      );
    };
    expect(kinds(pictured(recordOf(doubling, { days: 12 })))).toEqual(['smoke']);
  });
  describe('a lone hump that grows more slowly than the smoke rule asks', () => {
    /** Grows for an hour or so, and clears in two: 5 % of the light, at 17:00. */
    const hump =
      (lost: number, grows = 1.5 * hour) =>
      (t: number) =>
        lost * rise(t, at(6, 17), at(6, 17) + grows) * (1 - rise(t, at(6, 17) + grows, at(6, 19) + grows));
    const sampled = { days: 12, intervalSeconds: 60 };
    const of = (lost: (t: number) => number, log = {}) =>
      kinds(pictured(recordOf((t) => left(lost(t)), { ...sampled, ...log })));
    it('is smoke in doubt', () => expect(of(hump(0.3))).toEqual(['smoke']));
    it('is none where it grows over hours', () => expect(of(hump(0.3, 4 * hour))).toEqual(['slow']));
    it('is none where it stands for longer than smoke does', () => {
      const stays = (t: number) => 0.3 * rise(t, at(6, 11), at(6, 12.5)) * (1 - rise(t, at(6, 20), at(6, 22)));
      expect(of(stays)).toEqual(['slow']);
    });
    describe('on a scale of whole per cent, where rounding leaves it short of 3 %', () => {
      const coarse = { quantum: 0.01, noise: 0.0015 };
      it('is smoke', () => expect(of(hump(0.142, hour / 2), coarse)).toEqual(['smoke']));
      it('is none where it came with one sample', () => {
        const cameAtOnce = (t: number) => (t < at(6, 18) || t > at(6, 18.5) ? 0 : 0.132);
        expect(of(cameAtOnce, coarse)).toEqual(['slow']);
      });
    });
    it('is smoke though it dithers', () =>
      expect(of((t) => hump(0.25)(t) * (1 + 0.16 * Math.sin(t / (2.5 * minute))))).toEqual(['smoke']));
    it('is smoke where it goes on to a peak, however slowly', () =>
      expect(of((t) => 0.35 * Math.exp(-Math.abs(t - at(6, 18)) / (43 * minute)))).toEqual(['smoke']));
    it('is none where it is no deeper than twice the daily sway', () => {
      const sways = (t: number) => 0.1 * (1 - Math.cos((2 * Math.PI * (t - at(0, 3))) / (24 * hour)));
      expect(of((t) => sways(t) + hump(0.25)(t))).not.toContain('smoke');
    });
  });
  it('takes few samples that go up and down all the time, and very few uneven ones, for no smoke', () => {
    const flickering = (t: number) =>
      t < at(6, 15) || t >= at(6, 15) + 50 * minute ? 0 : 0.06 + 0.3 * Number(chanceOf(Math.round(t / 1000), 2) < 0.5);
    expect(kinds(pictured(recordOf((t) => 1 - flickering(t), { days: 14, intervalSeconds: 60 })))).not.toContain(
      'smoke',
    );
    const few = [0.1, 0.03, 0.02, 0.06, 0.08, 0.02, 0.06, 0.02];
    const uneven = (t: number) => few[Math.floor((t - at(6, 15)) / (5 * minute))] ?? 0;
    expect(kinds(pictured(recordOf((t) => 1 - uneven(t), { days: 14, noise: 0.002 })))).toEqual(['slow']);
  });
  it('takes shallow flat steps at working hours on many days for a load', () => {
    const loaded = (t: number) => {
      const hours = ((t - at(0)) / hour) % 24;
      const day = Math.floor((t - at(0)) / (24 * hour));
      return 1 - (hours > 8 + (day % 3) && hours < 9.5 + (day % 2) + (day % 3) ? 0.04 : 0);
    };
    expect(kinds(pictured(recordOf(loaded, { days: 20 })))).toEqual(['load']);
  });
  it('takes what fell in part and stands to the end of a log of hours for a knock, unless it fell nearly all', () => {
    const fell = (lost: number, hours: number) => {
      const log = recordOf((t) => (t < at(1, -hours) ? 1 : 1 - lost), { days: 1, intervalSeconds: 10 });
      return diagnosed(log)
        .findings.filter((f) => f.cause !== 'smoke-like')
        .map((f) => f.cause);
    };
    expect(fell(0.3, 10)).toEqual(['misalignment-step']);
    expect(fell(0.95, 10)).toContain('obstruction');
  });
  it('takes what grew over three samples or more for smoke, though it leaves at once', () => {
    const grown = (t: number) => (t > at(6, 14) ? 1 : left(0.5 * rise(t, at(6, 9), at(6, 9) + 4 * minute)));
    expect(kinds(pictured(recordOf(grown, { days: 12, intervalSeconds: 60 })))).toEqual(['smoke']);
  });
  it('asks for two other nights of mist as quick as smoke, and for no fewer', () => {
    const misty = (nights: number) =>
      kinds(
        pictured(
          recordOf(
            (t) => {
              const night = Math.floor((t - at(0)) / (24 * hour)) / 4;
              const hours = ((t - at(0)) / hour) % 24;
              return left(night % 1 === 0 && night < nights ? rise(hours, 3, 4) * (1 - rise(hours, 6, 8)) : 0);
            },
            { days: 14 },
          ),
        ),
      );
    expect(misty(3)).toEqual(['film']);
    expect(misty(2)).toEqual(['smoke']);
  });
  it('takes no dip of minutes for mist, however misty the nights about it are', () => {
    const misty = (t: number) => {
      const hours = ((t - at(0)) / hour) % 24;
      const film = 0.6 * rise(hours, 2.5, 5) * (1 - rise(hours, 6, 8.5));
      return Math.floor((t - at(0)) / (24 * hour)) % 2 === 0 ? film : 0;
    };
    // On the clear days something passes for ten minutes, some hours after the mist.
    const passes = (t: number) => {
      const date = Math.floor((t - at(0)) / (24 * hour));
      const minutes = (t - at(date, 8.7)) / minute - 25 * (date % 3);
      return date % 2 === 1 && minutes >= 0 && minutes < 10 ? 0.3 : 0;
    };
    const { excursions, kind } = pictured(recordOf((t) => left(misty(t) + passes(t)), { days: 24 }));
    const brief = excursions.filter((e) => e.sign === 1 && e.end - e.start < 20 * minute);
    expect(brief.length).toBeGreaterThan(5);
    for (const e of brief) expect(kind.get(e)).not.toBe('film');
    expect(excursions.filter((e) => kind.get(e) === 'film').length).toBeGreaterThan(8);
  });
  describe('beside a load that turns the head into the beam on most work days', () => {
    /** Days begin and end their work at other hours, and some have none: the cycle's fit leaves dips and bumps. */
    const loaded = (t: number) => {
      const date = Math.floor((t - at(0)) / (24 * hour));
      const hours = ((t - at(0)) / hour) % 24;
      if (date % 7 > 4 || date % 9 === 3) return 0.8;
      return hours > 6 + ((date * 5) % 4) / 2 && hours < 12 + ((date * 3) % 5) / 2 ? 0.97 : 0.8;
    };
    const sampled = { days: 60, intervalSeconds: 900 };
    it('takes what only the cycle makes of a flat level for none of its own', () => {
      const { excursions, kind } = pictured(recordOf(loaded, sampled));
      const sorted = excursions.filter(({ depth }) => depth > 0.03).map((e) => kind.get(e));
      expect(sorted).toContain('slow');
      for (const other of ['film', 'dust', 'light']) expect(sorted).not.toContain(other);
    });
    it('still knows mist in which the level itself falls', () => {
      const misty = (t: number) => {
        const hours = ((t - at(0)) / hour) % 24;
        const night = Math.floor((t - at(0)) / (24 * hour)) % 4 === 1;
        return loaded(t) * left(night ? 0.8 * rise(hours, 0.5, 2.5) * (1 - rise(hours, 3.5, 5)) : 0);
      };
      const { excursions, kind } = pictured(recordOf(misty, sampled));
      expect(excursions.filter((e) => kind.get(e) === 'film').length).toBeGreaterThan(10);
    });
  });
});
