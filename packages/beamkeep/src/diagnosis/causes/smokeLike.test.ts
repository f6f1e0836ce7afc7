import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  at,
  chanceOf,
  diagnosed,
  hourOf,
  iso,
  left,
  measured,
  normalOf,
  recordOf,
  rise,
  type Sampled,
  siteOf,
  stated,
  theOne,
} from '../../../../../tests/diagnosis/kit.js';
import { fireBegins, healthy, smoulder, typical } from '../../../../../tests/diagnosis/typical.js';
import { day, hour, minute, second } from '../../columns/index.js';
import { slowestSmoke } from '../../numbers/index.js';

describe('smoke-like', () => {
  it('is told of a smouldering fire from its growth to its clearing: treat as fire', () => {
    const found = theOne(diagnosed(typical['smoke-like']()), 'smoke-like');
    expect(found.start).toBeGreaterThanOrEqual(fireBegins);
    expect(found.start).toBeLessThan(fireBegins + hour);
    expect(found.end).toBeGreaterThan(fireBegins + 2 * hour);
    expect(found.end).toBeLessThan(fireBegins + 6 * hour);
    expect(measured(found, 'greatest obscuration')).toBeCloseTo(100 * (1 - left(2.2)), 0);
    expect([found.severity, found.ongoing]).toEqual(['act', false]);
    expect(found.summary + found.action).toMatch(/treat as fire/i);
  });
  it('is for the plan where it stayed under half the alarm threshold', () => {
    const faint = recordOf((t) => left(0.5 * rise(t, at(11, 20), at(11, 21)) * (1 - rise(t, at(11, 22), at(11, 23)))), {
      days: 12,
    });
    expect(theOne(diagnosed(faint), 'smoke-like').severity).toBe('watch');
  });
  it('is to be acted upon where it lasts to the end', () => {
    const last = recordOf((t) => left(0.5 * rise(t, at(11, 20), at(11, 21))), { days: 12 });
    const open = theOne(diagnosed(last), 'smoke-like');
    expect([open.severity, open.ongoing]).toEqual(['act', true]);
  });
  it('is told of whatever the equipment would call fire, explained or not', () => {
    const dirty = diagnosed(recordOf((t) => left((2.6 * (t - at(0))) / (at(30) - at(0))), { days: 30 }));
    expect(stated(dirty, 'contamination')).toHaveLength(1);
    expect(stated(dirty, 'smoke-like').at(-1)).toMatchObject({ severity: 'act', ongoing: true });
  });
  it('carries the visit that covers it', () => {
    const tested = siteOf(
      {},
      { visits: [{ time: iso(fireBegins - hour), until: iso(fireBegins + 12 * hour), work: 'tested' }] },
    );
    expect(theOne(diagnosed(typical['smoke-like'](), tested), 'smoke-like').during).toBe('tested');
  });
  it('two fires are two episodes', () => {
    const twice = recordOf((t) => left(smoulder(t) + smoulder(t - 30 * hour)), { days: 20 });
    expect(stated(diagnosed(twice), 'smoke-like')).toHaveLength(2);
  });
  it('is told of the odd one out beside a family of another kind', () => {
    const misty = (t: number): number => 0.5 * rise(hourOf(t), 2.5, 5) * (1 - rise(hourOf(t), 6, 8.5));
    const both = recordOf((t) => left(misty(t) + smoulder(t)), { days: 30 });
    const found = diagnosed(both);
    expect(stated(found, 'condensation')).toHaveLength(1);
    expect(stated(found, 'smoke-like')).toHaveLength(1);
  });
  /** Whether smoke is told of that overlaps a stretch. */
  const tells = (loss: (t: number) => number, from: number, to: number, sampled: Sampled) =>
    stated(diagnosed(recordOf((t) => left(loss(t)), sampled)), 'smoke-like').some(
      (f) => f.start <= to && f.end >= from,
    );

  it('law: is told of lone growth of any size, pace and sampling that the rule asks about', () =>
    fc.assert(
      fc.property(
        fc.constantFrom(5, 60, 300, 900),
        fc.double({ min: 0.25, max: 3, noNaN: true }),
        fc.integer({ min: 4, max: 20 }),
        fc.double({ min: 0, max: 24, noNaN: true }),
        fc.constantFrom(0, 0.25, 0.5),
        (intervalSeconds, most, samples, hourOfDay, dither) => {
          const begins = at(intervalSeconds < 60 ? 1 : 5, hourOfDay);
          // Over three samples or more, and somewhat faster than 0.02 dB a minute.
          const grows = Math.min(samples * intervalSeconds * 1000, (most / 0.025) * minute);
          fc.pre(grows >= 3 * intervalSeconds * 1000);
          const pace = most / (grows / minute);
          const holds = Math.max(20 * minute, 6000 * intervalSeconds);
          const smoke = (t: number) =>
            t < begins
              ? 0
              : Math.min(most, ((t - begins) / minute) * pace) *
                Math.exp(-Math.max(0, t - begins - grows - holds) / holds) *
                (1 - dither * chanceOf(Math.floor(t / 1000), 3));
          const sampled = { days: intervalSeconds < 60 ? 3 : 12, intervalSeconds };
          expect(tells(smoke, begins, begins + grows + holds, sampled)).toBe(true);
        },
      ),
      { seed: 2, numRuns: 40 },
    ));
  it('law: is told of a lone smoulder that hangs by day, at a quarter of that pace, on a scale of whole per cent too', () =>
    fc.assert(
      fc.property(
        fc.constantFrom(30, 60, 300, 600),
        fc.double({ min: 0.2, max: 0.6, noNaN: true }),
        fc.double({ min: 13, max: 17, noNaN: true }),
        fc.constantFrom(0, 0.001, 0.01),
        (intervalSeconds, most, hourOfDay, quantum) => {
          const begins = at(6, hourOfDay);
          const grows = (most / (slowestSmoke.value / 4)) * minute;
          const ends = begins + grows + 2 * hour;
          const smoke = (t: number) =>
            t < begins ? 0 : Math.min(most, (most * (t - begins)) / grows) * (1 - rise(t, ends - hour, ends));
          expect(tells(smoke, begins, ends, { days: 14, intervalSeconds, quantum, noise: 0.002 })).toBe(true);
        },
      ),
      { seed: 3, numRuns: 40 },
    ));
  it('is told of a growth of minutes amid a night of mist, apart from it', () => {
    const misty = (t: number): number => 0.5 * rise(hourOf(t), 2.5, 5) * (1 - rise(hourOf(t), 6, 8.5));
    const puff = (t: number): number =>
      0.5 * rise(t, at(20, 5.5), at(20, 5.5) + 10 * minute) * (1 - rise(t, at(20, 6), at(20, 6.5)));
    const found = diagnosed(recordOf((t) => left(misty(t) + puff(t)), { days: 30 }));
    expect(stated(found, 'condensation')).toHaveLength(1);
    const smoke = theOne(found, 'smoke-like');
    expect(Math.abs(smoke.start - at(20, 5.5))).toBeLessThan(20 * minute);
    expect(smoke.end - smoke.start).toBeLessThan(2 * hour);
  });
  it('is told of smoke that hangs for days, whose dithering is no noise to stand clear of', () => {
    const hangs = (t: number) =>
      rise(t, at(5, 12), at(5, 12.5)) * (1.2 + 0.8 * (chanceOf(Math.floor(t / minute), 4) - 0.5));
    expect(tells(hangs, at(5, 12), at(5, 13), { days: 15 })).toBe(true);
  });
  it('is told of smoke in a beam whose samples are rough for days, by the share that noise lets through', () => {
    const rough = (t: number) => 0.35 * (chanceOf(Math.floor(t / minute), 6) - 0.5);
    const smoke = (t: number) => 1.3 * rise(t, at(5, 12), at(5, 12.3)) * (1 - rise(t, at(5, 13.5), at(5, 14)));
    expect(tells((t) => (t > at(2) ? rough(t) : 0) + smoke(t), at(5, 12), at(5, 14), { days: 12 })).toBe(true);
  });
  it('a fire that comes while the smoke of another hangs is an episode of its own', () => {
    const first = (t: number) => 1.5 * rise(t, at(3, 10), at(3, 10.2));
    const second = (t: number) => 3 * rise(t, at(3, 13), at(3, 13.2));
    const found = stated(
      diagnosed(recordOf((t) => left((first(t) + second(t)) * (1 - rise(t, at(3, 15), at(3, 16)))), { days: 6 })),
      'smoke-like',
    );
    expect(found).toHaveLength(2);
    expect(Math.abs((found[1]?.start ?? 0) - at(3, 13))).toBeLessThan(20 * minute);
  });
  it('a lesser fire that comes while the smoke of another hangs is an episode of its own as well', () => {
    const both = (t: number) => 2.5 * rise(t, at(3, 10), at(3, 10.2)) + rise(t, at(3, 13), at(3, 13.2));
    const found = stated(
      diagnosed(recordOf((t) => left(both(t) * (1 - rise(t, at(3, 15), at(3, 16)))), { days: 6 })),
      'smoke-like',
    );
    expect(found.map(({ start }) => Math.round((start - at(3)) / hour))).toEqual([10, 13]);
  });
  it('a fire while what grew to another level still stands is an episode of its own, and what stood before ends', () => {
    // The level before is followed by the slow course: the second growth is another excursion.
    const stood = (t: number) => 1.6 * rise(t, at(3, 8), at(3, 8.3)) * (1 - rise(t, at(4, 0), at(4, 0.3)));
    const fire = (t: number) => 2.5 * rise(t, at(3, 15), at(3, 15.1)) * (1 - rise(t, at(3, 15.5), at(3, 15.9)));
    const found = stated(
      diagnosed(recordOf((t) => left(stood(t) + fire(t)), { days: 6, intervalSeconds: 30 })),
      'smoke-like',
    );
    const own = found.find(({ start }) => Math.abs(start - at(3, 15)) < 10 * minute);
    expect((own?.end ?? at(6)) - at(3, 15)).toBeLessThan(2 * hour);
    expect(found.some(({ start, end }) => start < at(3, 9) && end < at(3, 15.1))).toBe(true);
  });
  it('what went in part and left the rest for good had ended long before the next fire', () => {
    const rest = (t: number) => 1.8 * rise(t, at(3, 15), at(3, 15.2)) - rise(t, at(4, 20), at(4, 20.2));
    const fire = (t: number) => 2 * rise(t, at(9, 15), at(9, 15.2)) * (1 - rise(t, at(9, 17), at(9, 18)));
    const found = stated(diagnosed(recordOf((t) => left(rest(t) + fire(t)), { days: 12 })), 'smoke-like');
    expect(found.map(({ start }) => Math.round((start - at(0)) / day - 0.6))).toEqual([3, 9]);
    expect(found[0]?.end).toBeLessThan(at(6));
  });
  it.each([0.55, 0.61, 0.83])(
    'is not told of a shake of %d Hz that begins and ends, and is told of smoke amid it',
    (hertz) => {
      const shaken = (t: number) =>
        t > at(0, 0.3) && t < at(0, 0.7)
          ? 0.8 * Math.sin(Math.PI * hertz * (t / second) + 3 * chanceOf(Math.floor(t / (20 * second)), 2)) ** 2
          : 0;
      const smoke = (t: number) => 2 * rise(t, at(0, 0.45), at(0, 0.47)) * (1 - rise(t, at(0, 0.55), at(0, 0.58)));
      const log = { days: 1 / 24, intervalSeconds: 0.5 };
      expect(stated(diagnosed(recordOf((t) => left(shaken(t)), log)), 'smoke-like')).toEqual([]);
      expect(tells((t) => shaken(t) + smoke(t), at(0, 0.45), at(0, 0.55), log)).toBe(true);
    },
  );
  it('is not told of samples that a shake scatters at slow sampling', () => {
    const of = (t: number, seed: number) => chanceOf(Math.floor(t / (10 * second)), seed);
    const shaken = (t: number) => (hourOf(t) > 7 && hourOf(t) < 17 && of(t, 8) < 0.3 ? 0.3 + 0.3 * of(t, 17) : 0);
    expect(stated(diagnosed(recordOf((t) => left(shaken(t)), { days: 3, intervalSeconds: 10 })), 'smoke-like')).toEqual(
      [],
    );
  });
  it('is told of one smooth loss of hours among puffs of its growth that come and go', () => {
    const puff = (minutes: number) => (minutes < 0 ? 0 : (1 - Math.exp(-minutes / 5)) * Math.exp(-minutes / 12));
    const work = (t: number) =>
      [9, 11.3, 13, 15.2].reduce(
        (sum, h, k) => sum + (0.6 + 0.2 * k) * puff((t - at(Math.floor((t - at(0)) / day), h)) / minute),
        0,
      );
    const smoke = (t: number) =>
      t < at(12, 14) ? 0 : 0.9 * (1 - Math.exp((at(12, 14) - t) / (8 * minute))) * (1 - rise(t, at(12, 20), at(13, 2)));
    expect(
      tells((t) => (t < at(12) || t > at(13) ? work(t) : 0) + smoke(t), at(12, 14), at(12, 20), {
        days: 20,
        intervalSeconds: 300,
      }),
    ).toBe(true);
  });
  it('is told of smoke that grew over a few samples of a slow logger and then stays, rough, for weeks', () => {
    const begins = at(12, 11);
    const grown = [0.04, 0.26, 0.63];
    const stays = (t: number) =>
      t < begins ? 0 : (grown[Math.floor((t - begins) / (5 * minute))] ?? 0.7 + 0.15 * (chanceOf(t / minute, 5) - 0.5));
    expect(tells(stays, begins, begins + hour, { days: 50 })).toBe(true);
  });
  it.each([
    [[0.05, 0.12, 0.36, 0.92, 0.65, 0.6], 0.45, 0.65, 2, 5],
    [[0.03, 0.1, 0.35, 0.89, 0.61, 0.58], 0.35, 0.8, 3, 5],
    [[0.05, 0.2, 0.5, 0.95, 0.6, 0.6, 0.45, 1.05], 0.45, 0.65, 2, 7],
    [[0.05, 0.2, 0.5, 0.95, 0.6, 0.6, 0.45, 1.05], 0.4, 0.6, 2, 5],
  ])(
    'is told of smoke that grew by %j dB over ten minutes each and then hangs, rough, for most of the log',
    (grown, least, most, shape, seed) => {
      const begins = at(3, 17);
      const stays = (t: number) =>
        t < begins
          ? 0
          : (grown[Math.floor((t - begins) / (10 * minute))] ?? least + most * chanceOf(t / minute, seed) ** shape);
      expect(tells(stays, begins, begins + 2 * hour, { days: 18, intervalSeconds: 600 })).toBe(true);
    },
  );
  it('is told of smoke that grew in strides none of which was most of it, and then stays', () => {
    const begins = at(6, 3);
    const grown = [0.02, 0.23, 0.37, 0.43, 0.42, 0.52];
    const stays = (t: number) =>
      t < begins ? 0 : (grown[Math.floor((t - begins) / minute)] ?? 0.35 + 0.3 * chanceOf(t / minute, 5));
    expect(tells(stays, begins, begins + hour, { days: 9, intervalSeconds: 60 })).toBe(true);
  });
  it('is for action where it is a fire signal, however little this growth adds to what is lost already', () => {
    const both = (t: number) => 2.2 * rise(t, at(2, 10), at(2, 10.2)) + 0.4 * rise(t, at(8, 13), at(8, 13.2));
    const found = stated(
      diagnosed(recordOf((t) => left(both(t) * (1 - rise(t, at(8, 15), at(8, 16)))), { days: 14 })),
      'smoke-like',
    );
    expect(found.some(({ start }) => Math.abs(start - at(8, 13)) < hour)).toBe(true);
    expect(found.map(({ severity }) => severity)).toEqual(found.map(() => 'act'));
    for (const one of found) expect(measured(one, 'greatest obscuration')).toBeGreaterThan(35);
  });
  it('is told of smoke that stays for most of a short log, and of the next fire within it', () => {
    const both = (t: number) => 0.63 * rise(t, at(0, 2.5), at(0, 2.6)) + 2.5 * rise(t, at(0, 13.7), at(0, 13.8));
    const found = stated(diagnosed(recordOf((t) => left(both(t)), { days: 0.75, intervalSeconds: 60 })), 'smoke-like');
    expect(found.map(({ start }) => Math.round((start - at(0)) / (hour / 2)) / 2)).toEqual([2.5, 13.5]);
  });
  it('is told of a growth of minutes that is soon gone, in samples that are rough', () => {
    const rough = (t: number) => 0.15 * (chanceOf(t / minute, 7) - 0.5) + 0.1 * (chanceOf(t / minute, 8) - 0.5);
    const puff = (t: number) =>
      0.65 *
      rise(t, at(6, 12), at(6, 12) + 9 * minute) *
      (1 - rise(t, at(6, 12) + 9 * minute, at(6, 12) + 18 * minute));
    const loss = (t: number) => (t > at(4) ? rough(t) : 0) + puff(t);
    expect(tells(loss, at(6, 12), at(6, 12.4), { days: 12, intervalSeconds: 120 })).toBe(true);
  });
  describe('a dip that lies still where dips as large, at those hours, are ragged', () => {
    const morning = (t: number) => Math.floor((t - at(0)) / (24 * hour));
    const ragged = (t: number) =>
      hourOf(t) > 8.2 && hourOf(t) < 9.9 && morning(t) % 3 === 1 ? 0.8 * chanceOf(t / minute, 9) : 0;
    /** Stands from 8:42 to so many hours. */
    const still = (t: number, to: number) =>
      0.8 * rise(t, at(12, 8.2), at(12, 8.7)) * (1 - rise(t, at(12, to), at(12, to + 0.4)));
    const isTold = (loss: (t: number) => number) =>
      tells(loss, at(12, 8), at(12, 10), { days: 30, intervalSeconds: 600 });
    it('is told of', () => expect(isTold((t) => ragged(t) + still(t, 9.2))).toBe(true));
    it('is not where so few samples show it as may lie still by chance', () =>
      expect(isTold((t) => ragged(t) + still(t, 9.05))).toBe(false));
    it('is not where most of its like are too short to tell whether they lie still', () => {
      const brief = (t: number) =>
        morning(t) % 3 === 1 && morning(t) > 6 ? (hourOf(t) > 8.6 && hourOf(t) < 9.1 ? 0.8 : 0) : ragged(t);
      expect(isTold((t) => brief(t) + still(t, 9.2))).toBe(false);
    });
  });
  it('growths that come and go within some hours are one episode, and no longer than those hours', () => {
    const puffs = (t: number) =>
      [9, 10.5, 12, 13.5, 20].reduce(
        (sum, h, k) =>
          sum + (0.4 + 0.3 * k) * rise(t, at(3, h), at(3, h + 0.2)) * (1 - rise(t, at(3, h + 0.3), at(3, h + 0.5))),
        0,
      );
    const found = stated(diagnosed(recordOf((t) => left(puffs(t)), { days: 6, intervalSeconds: 60 })), 'smoke-like');
    expect(found).toHaveLength(2);
    expect((found[0]?.end ?? 0) - (found[0]?.start ?? 0)).toBeLessThanOrEqual(6 * hour);
  });
  it.each([
    ['begins afresh', 1.3, [8, 12]],
    ['is one of them where it is not to be acted upon', 0.5, [8]],
  ])('after a pause, what comes and goes as others did %s', (_, most, starts) => {
    const brief = (t: number, h: number, dB: number) =>
      dB * rise(t, at(3, h), at(3, h + 0.15)) * (1 - rise(t, at(3, h + 0.2), at(3, h + 0.35)));
    const loss = (t: number) => [8, 8.8, 9.6].reduce((sum, h) => sum + brief(t, h, 0.4), brief(t, 12, most));
    const found = stated(diagnosed(recordOf((t) => left(loss(t)), { days: 6, intervalSeconds: 60 })), 'smoke-like');
    expect(found.map(({ start }) => Math.round((start - at(3)) / hour))).toEqual(starts);
  });
  it('a fire that hangs among growths that come and go is an episode of its own', () => {
    const puff = (t: number, h: number) =>
      0.6 * rise(t, at(3, h), at(3, h + 0.1)) * (1 - rise(t, at(3, h + 0.15), at(3, h + 0.25)));
    const fire = (t: number) => 1.4 * rise(t, at(3, 10), at(3, 10.2)) * (1 - rise(t, at(3, 11.5), at(3, 11.7)));
    const loss = (t: number) => [8, 8.7, 13, 13.7].reduce((sum, h) => sum + puff(t, h), fire(t));
    const found = stated(diagnosed(recordOf((t) => left(loss(t)), { days: 6, intervalSeconds: 60 })), 'smoke-like');
    expect(found.map(({ start }) => Math.round((start - at(3)) / hour))).toEqual([8, 10, 13]);
    expect(found.map(({ end }) => Math.round((end - at(3)) / hour))).toEqual([9, 12, 14]);
  });
  it('a fire signal among growths that come and go is an episode of its own, however brief', () => {
    const brief = (t: number, h: number, most: number) =>
      most * rise(t, at(3, h), at(3, h + 0.15)) * (1 - rise(t, at(3, h + 0.2), at(3, h + 0.35)));
    const loss = (t: number) => [8, 9.5, 12.5].reduce((sum, h) => sum + brief(t, h, 0.6), brief(t, 11, 2.8));
    const found = stated(diagnosed(recordOf((t) => left(loss(t)), { days: 6, intervalSeconds: 60 })), 'smoke-like');
    const fire = found.find(({ severity }) => severity === 'act');
    expect(Math.abs((fire?.start ?? 0) - at(3, 11))).toBeLessThan(10 * minute);
    expect((fire?.end ?? 0) - (fire?.start ?? 0)).toBeLessThan(30 * minute);
  });
  it.each([
    [15, 0.3, 1.7],
    [13, 0.05, 1],
    [16, 0.1, 1],
    [11.2, 0.1, 1.7],
  ])('is told of smoke that hangs though an object crosses it at %f h for %f h', (crosses, lasts, most) => {
    const smoke = (t: number) => most * rise(t, at(3, 11), at(3, 11.3)) * (1 - rise(t, at(3, 15), at(3, 17)));
    const object = (t: number) => (t >= at(3, crosses) && t < at(3, crosses + lasts) ? 20 : 0);
    const found = stated(
      diagnosed(recordOf((t) => left(smoke(t) + object(t)), { days: 6, intervalSeconds: 60 })),
      'smoke-like',
    );
    expect(found.some(({ start }) => Math.abs(start - at(3, 11)) < 20 * minute)).toBe(true);
  });
  it.each([7, 8, 9])(
    'is not told of a wild sample amid noise that leans to one side for some samples, seed %i',
    (seed) => {
      const noise = (t: number): number => {
        const k = Math.floor(t / (minute / 2));
        const wild = chanceOf(k, seed + 1000) < 0.04 ? 5 : 1;
        return hourOf(t) >= 21 || hourOf(t) < 2 ? 0.025 * wild * normalOf(k, seed) : 0;
      };
      const record = recordOf((t) => 1 + noise(t), { days: 3, intervalSeconds: 30, seed });
      expect(stated(diagnosed(record), 'smoke-like')).toEqual([]);
    },
  );
  describe.each([0.5, 5])('where a sample is a mean over its %f min', (minutes) => {
    const interval = minutes * minute;
    /** Mean over the interval up to a sample of light that loses `lost` for some five hours, and what leaves that unsteady. */
    const crossed = (lost: number, unsteady: number, { goes = 0, smoke = 0 } = {}) =>
      recordOf(
        (t) => {
          const [begins, ends] = [at(6, 10) + 0.4 * interval, at(6, 15) + 0.7 * interval];
          const within = Math.max(0, Math.min(t, ends) - Math.max(t - interval, begins)) / interval;
          const clears = t > ends && goes > 0 ? 1 - rise(t, ends, ends + goes) : within;
          const hangs = smoke * rise(t, at(6, 12), at(6, 12.2)) * (1 - rise(t, at(6, 12.5), at(6, 14)));
          const light = 1 - lost * clears * (1 + unsteady * (chanceOf(Math.floor(t / interval), 3) - 0.5));
          return light * left(hangs);
        },
        { days: 9, intervalSeconds: interval / 1000 },
      );
    it('is not told of a flat object, of which a sample on either side holds a part', () => {
      const object = diagnosed(crossed(0.3, 0));
      expect(stated(object, 'smoke-like')).toEqual([]);
      expect(theOne(object, 'obstruction').confidence).toBeGreaterThan(0.9);
    });
    it('is told of smoke while a flat object stands there, on its own', () => {
      const found = stated(diagnosed(crossed(0.2, 0, { smoke: 0.4 })), 'smoke-like');
      const own = found.find(({ start }) => Math.abs(start - at(6, 12)) < hour / 4);
      expect(own?.end).toBeLessThan(at(6, 14));
    });
    it.each([
      ['dithers while it hangs', 0.3, 0],
      ['takes half an hour to clear', 0, hour / 2],
    ])('is told of what %s', (_, unsteady, goes) =>
      expect(stated(diagnosed(crossed(0.3, unsteady, { goes })), 'smoke-like')).toHaveLength(1),
    );
    it('is told of a flat object past the alarm threshold, as unlikely', () =>
      expect(theOne(diagnosed(crossed(0.6, 0)), 'smoke-like').confidence).toBeLessThan(0.1));
  });
  it('is told of flames that grow within a minute, at a second', () => {
    const flames = recordOf(
      (t) => left(6 * rise(t, at(0, 1), at(0, 1) + 40_000) * (1 - rise(t, at(0, 1.5), at(0, 2.2)))),
      { days: 0.2, intervalSeconds: 1 },
    );
    const found = theOne(diagnosed(flames), 'smoke-like');
    expect(Math.abs(found.start - at(0, 1))).toBeLessThan(minute);
    expect(found.severity).toBe('act');
  });
  it.each(['process-aerosol', 'condensation', 'misalignment-step'] as const)(
    'is not told of %s below the alarm threshold',
    (other) => expect(stated(diagnosed(typical[other]()), 'smoke-like')).toEqual([]),
  );
  it('is not told of a healthy beam', () => {
    expect(stated(diagnosed(healthy()), 'smoke-like')).toEqual([]);
  });
});
