import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { UsageError } from '../columns/index.js';
import { parseSite } from './parseSite.js';
import { siteKeys } from './siteKeys.js';

const beam = { id: 'B1', layout: 'reflective', separation: 62 };
const site = (more: object = {}, beamMore: object = {}) => ({ ...more, beams: [{ ...beam, ...beamMore }] });
const problem = (input: unknown): string => {
  try {
    parseSite(input, 'depot.json');
  } catch (e) {
    if (e instanceof UsageError) return e.message;
    throw e;
  }
  return 'no problem';
};

describe('parseSite', () => {
  it('reads every key of the form', () => {
    const whole = {
      format: 'beamkeep-site/1',
      name: 'Tram depot, maintenance hall',
      timeZone: 'Europe/Lisbon',
      latitude: 41.1,
      longitude: -8.6,
      timeColumn: ['date', 'time'],
      timeFormat: 'day-first',
      sampling: 'on-change',
      beams: [
        {
          id: 'B1',
          layout: 'reflective',
          separation: 62,
          height: 11.5,
          bearing: 270,
          tilt: -1,
          wavelength: 870,
          halfAngle: 0.6,
          signalColumn: 'b1',
          signalUnit: 'counts',
          cleanAir: 2131,
          covered: 9,
          coveredSubtracted: true,
          compensation: { limitDecibels: 1.5 },
          alarmThreshold: 25,
          alarmDelay: 5,
          faultThreshold: 95,
          faultDelay: 20,
          latching: false,
          hysteresis: 3,
          temperatureColumn: 't_roof',
          humidityColumn: 'rh',
          gainColumn: 'gain',
          plantColumn: 'fan',
        },
      ],
      visits: [{ time: '2027-03-02T09:00:00Z', until: '2027-03-02T10:30:00Z', beam: 'B1', work: 'cleaned' }],
    };
    const { format, ...rest } = whole;
    expect(format).toBe('beamkeep-site/1');
    expect(parseSite(JSON.stringify(whole))).toEqual({
      ...rest,
      beams: [{ ...whole.beams[0], assumed: [] }],
      visits: [
        {
          time: Date.parse('2027-03-02T09:00:00Z'),
          until: Date.parse('2027-03-02T10:30:00Z'),
          beam: 'B1',
          work: 'cleaned',
        },
      ],
    });
  });

  it('fills in the defaults and names those that bear on safety', () => {
    expect(parseSite(site())).toEqual({
      name: 'unnamed site',
      timeZone: 'UTC',
      sampling: 'regular',
      visits: [],
      beams: [
        {
          ...beam,
          wavelength: 880,
          signalUnit: 'percent',
          cleanAir: 100,
          coveredSubtracted: false,
          compensation: 'unknown',
          alarmThreshold: 35,
          alarmDelay: 10,
          faultThreshold: 90,
          faultDelay: 10,
          latching: true,
          hysteresis: 0,
          assumed: [
            'alarmThreshold 35 %',
            'alarmDelay 10 s',
            'faultThreshold 90 %',
            'faultDelay 10 s',
            'cleanAir 100 %',
            'covered not measured: taken that nothing comes back',
            'wavelength 880 nm',
          ],
        },
      ],
    });
  });

  it.each([
    ['decibels', 0, 'cleanAir 0 dB'],
    ['obscuration', 0, 'cleanAir 0 % obscuration'],
  ])('takes the clean-air reading of %s from the unit', (signalUnit, cleanAir, words) => {
    const [read] = parseSite(site({}, { signalUnit })).beams;
    expect(read?.cleanAir).toBe(cleanAir);
    expect(read?.assumed).toContain(words);
  });

  it('leaves the clean-air reading of counts to the log', () => {
    const [read] = parseSite(site({}, { signalUnit: 'counts' })).beams;
    expect(read && 'cleanAir' in read).toBe(false);
    expect(read?.assumed.join()).not.toContain('cleanAir');
  });

  it.each([
    [null, 'depot.json: the site file holds null: it must hold an object: { ... }.'],
    ['null', 'depot.json: the site file holds null: it must hold an object: { ... }.'],
    ['[]', 'depot.json: the site file holds a list: it must hold an object: { ... }.'],
    ['7', 'depot.json: the site file holds 7: it must hold an object: { ... }.'],
    ['"x"', 'depot.json: the site file holds "x": it must hold an object: { ... }.'],
    [undefined, 'depot.json: the site file holds undefined: it must hold an object: { ... }.'],
    ['{}', 'depot.json: beams is missing (the beams, one object each): give a list of objects: [ { ... } ].'],
    [{ beams: [] }, 'depot.json: beams is empty: give at least one beam.'],
    [{ beams: {} }, 'depot.json: beams is an object: give a list of objects: [ { ... } ].'],
    [{ beams: [null] }, 'depot.json: beams[0]: is null: give an object: { "id": ... }.'],
    [{ beams: [[]] }, 'depot.json: beams[0]: is a list: give an object: { "id": ... }.'],
    [{ ...site(), visits: 'none' }, 'depot.json: visits is "none": give a list of objects: [ { ... } ].'],
    [{ ...site(), visits: [3] }, 'depot.json: visits[0]: is 3: give an object: { "time": ... }.'],
  ])('refuses %j', (input, message) => expect(problem(input)).toBe(message));

  it('refuses what is nested without end', () => {
    const depth = 100_000;
    const nested = '['.repeat(depth) + ']'.repeat(depth);
    for (const text of [nested, `{"beams":[{"id":${nested}}]}`, '['.repeat(depth)]) {
      expect(problem(text)).toBe('depot.json: it is nested far deeper than a site file.');
    }
  });

  it('names an unknown key and the nearest known one', () => {
    expect(problem(site({}, { alarmTreshold: 35 }))).toBe(
      'depot.json: beams[0] "B1": unknown key "alarmTreshold": the nearest known key is "alarmThreshold".',
    );
    expect(problem(site({ timezone: 'UTC' }))).toBe(
      'depot.json: unknown key "timezone": the nearest known key is "timeZone".',
    );
    expect(problem(site({}, { compensation: { limitDecibel: 3 } }))).toBe(
      'depot.json: beams[0] "B1": compensation: unknown key "limitDecibel": the nearest known key is "limitDecibels".',
    );
    expect(problem({ ...site(), visits: [{ time: '2027-03-02T09:00Z', kind: 'cleaned' }] })).toMatch(
      /^depot.json: visits\[0\]: unknown key "kind"/,
    );
    expect(problem(site({}, { sampling: 'mean' }))).toBe(
      'depot.json: beams[0] "B1": the key "sampling" does not stand here: it stands at the top level.',
    );
  });

  it('takes names of object internals for the unknown keys that they are', () => {
    for (const key of ['__proto__', 'constructor', 'toString', 'hasOwnProperty'])
      expect(problem(`{"${key}":1,"beams":[]}`)).toContain(`unknown key "${key}"`);
  });

  it.each(['__proto__', 'constructor', 'toString'])('has no trouble with a beam that is called %s', (id) => {
    const text = JSON.stringify({
      ...site({}, { id, signalColumn: id }),
      visits: [{ time: '2027-03-02T09:00Z', beam: id, work: 'reset' }],
    });
    expect(parseSite(text).beams[0]?.id).toBe(id);
  });

  it.each([
    [{ alarmThreshold: 0 }, 'alarmThreshold is 0: give a number above 0 and at most 100 [%].'],
    [{ alarmThreshold: 120 }, 'alarmThreshold is 120: give a number above 0 and at most 100 [%].'],
    [{ alarmThreshold: '35' }, 'alarmThreshold is "35": give a number above 0 and at most 100 [%], without quotes.'],
    [{ alarmThreshold: null }, 'alarmThreshold is null: give a number above 0 and at most 100 [%].'],
    [{ alarmDelay: -1 }, 'alarmDelay is -1: give a number from 0 to 86400 [s].'],
    [{ faultDelay: Number.NaN }, 'faultDelay is NaN: give a number from 0 to 86400 [s].'],
    [{ separation: 0 }, 'separation is 0: give a number above 0 and at most 1000 [m].'],
    [{ separation: Number.POSITIVE_INFINITY }, 'separation is Infinity: give a number above 0 and at most 1000 [m].'],
    [
      { separation: undefined },
      'separation is missing (distance between the two ends): give a number above 0 and at most 1000 [m].',
    ],
    [{ layout: 'reflected' }, 'layout is "reflected": use "reflective" or "end-to-end" (meant: "reflective"?).'],
    [{ layout: 'round' }, 'layout is "round": use "reflective" or "end-to-end".'],
    [{ wavelength: 0.88 }, 'wavelength is 0.88: give a number from 200 to 2500 [nm].'],
    [{ halfAngle: 0 }, 'halfAngle is 0: give a number above 0 and at most 90 [degrees].'],
    [{ tilt: 91 }, 'tilt is 91: give a number from -90 to 90 [degrees].'],
    [{ latching: 'yes' }, 'latching is "yes": give true or false, without quotes.'],
    [{ compensation: 'some' }, 'compensation is "some": use "none", "unknown" or { "limitDecibels": n }.'],
    [
      { signalColumn: '' },
      'signalColumn is "": give a text in quotes that is not empty and holds no control characters.',
    ],
    [
      { alarmThreshold: 90 },
      'alarmThreshold (90 %) must lie below faultThreshold (90 %, by default): give both as set in the equipment.',
    ],
    [{ hysteresis: 40 }, 'hysteresis is 40, not below alarmThreshold (35): an alarm could never be over.'],
  ])('refuses a beam with %j', (more, message) =>
    expect(problem(site({}, more))).toBe(`depot.json: beams[0] "B1": ${message}`),
  );

  it('names the place inside a compensation', () => {
    expect(problem(site({}, { compensation: { limitDecibels: -1 } }))).toBe(
      'depot.json: beams[0] "B1": compensation: limitDecibels is -1: give a number above 0 and at most 60 [dB].',
    );
    expect(problem(site({}, { compensation: {} }))).toContain('compensation: limitDecibels is missing');
  });

  it('names a beam by its place where it has no name', () => {
    expect(problem({ beams: [beam, { layout: 'reflective', separation: 3 }] })).toBe(
      'depot.json: beams[1]: id is missing (name of the beam, its own): give a text in quotes that is not empty and holds no control characters.',
    );
  });

  it('refuses two beams of one name', () => {
    expect(problem({ beams: [beam, { ...beam, id: 'B2' }, beam] })).toBe(
      'depot.json: beams[2]: the id "B1" is already that of beams[0]: give each beam its own.',
    );
  });

  it.each([
    [{ latitude: 91, longitude: 0 }, 'latitude is 91: give a number from -90 to 90 [degrees].'],
    [{ latitude: 0, longitude: 181 }, 'longitude is 181: give a number from -180 to 180 [degrees].'],
    [{ latitude: 41 }, 'latitude and longitude belong together: give both or neither.'],
    [
      { timeZone: 'Europe/Lisboa' },
      'timeZone is "Europe/Lisboa": give a zone by its IANA name, as in "Europe/Lisbon" (meant: "Europe/Lisbon"?).',
    ],
    [
      { timeColumn: ['date', 'date'] },
      'timeColumn is a list: give the name of a column, or two different names (date, time) as a list.',
    ],
    [{ timeColumn: 3 }, 'timeColumn is 3: give the name of a column, or two different names (date, time) as a list.'],
    [{ sampling: 'on change' }, 'sampling is "on change": use "regular", "mean" or "on-change" (meant: "on-change"?).'],
    [{ format: 'beamkeep-site/2' }, 'format is "beamkeep-site/2": use "beamkeep-site/1" (meant: "beamkeep-site/1"?).'],
  ])('refuses a site with %j', (more, message) => expect(problem(site(more))).toBe(`depot.json: ${message}`));

  it('lets no terminal escape into a message', () => {
    const message = problem(site({ name: '\u001b[2J\u009b2J' }));
    expect(message).toContain('name is "\\u001b[2J\\u009b2J"');
    expect([...message].every((c) => c >= ' ' && c < '\u007f')).toBe(true);
  });

  it('reads a visit without an offset as local time', () => {
    const read = parseSite({
      ...site({ timeZone: 'Europe/Lisbon' }),
      visits: [
        { time: '2027-07-02T09:00', work: 'cleaned' },
        { time: '2027-07-02T09:00+02:00', work: 'cleaned' },
      ],
    });
    expect(read.visits.map(({ time }) => new Date(time).toISOString())).toEqual([
      '2027-07-02T08:00:00.000Z',
      '2027-07-02T07:00:00.000Z',
    ]);
  });

  it.each([
    [{ time: 'tomorrow', work: 'reset' }, 'time is "tomorrow": give date and time as in "2027-03-02T09:00:00Z".'],
    [{ time: '2027-03-02', work: 'reset' }, 'time is "2027-03-02": give date and time as in "2027-03-02T09:00:00Z".'],
    [{ time: 1803978000000, work: 'reset' }, 'time is 1803978000000: give date and time as in "2027-03-02T09:00:00Z".'],
    [
      { time: '2027-02-30T09:00Z', work: 'reset' },
      'time is "2027-02-30T09:00Z": give date and time as in "2027-03-02T09:00:00Z".',
    ],
    [
      { time: '2027-03-28T01:30', work: 'reset' },
      'time is "2027-03-28T01:30": the change of the clock in Europe/Lisbon leaves that hour out or brings it twice: add the offset, as in "+01:00".',
    ],
    [
      { time: '2027-03-02T09:00Z', until: '2027-03-02T08:59Z', work: 'reset' },
      'until ("2027-03-02T08:59Z") is before time ("2027-03-02T09:00Z"): exchange or mend them.',
    ],
    [
      { time: '2027-03-02T09:00Z', beam: 'B9', work: 'reset' },
      'beam is "B9", which is no beam of this site: use "B1".',
    ],
    [
      { time: '2027-03-02T09:00Z', work: 'clean' },
      'work is "clean": use "cleaned", "realigned", "tested", "reset", "isolated" or "renormalised" (meant: "cleaned"?).',
    ],
    [
      { work: 'reset' },
      'time is missing (when the work was done, or began; without an offset it is local time in timeZone): give date and time as in "2027-03-02T09:00:00Z".',
    ],
  ])('refuses the visit %j', (visit, message) =>
    expect(problem({ ...site({ timeZone: 'Europe/Lisbon' }), visits: [visit] })).toBe(
      `depot.json: visits[0]: ${message}`,
    ),
  );

  it('takes the same time for both ends of a visit', () => {
    const visit = { time: '2027-03-02T09:00Z', until: '2027-03-02T09:00Z', work: 'reset' };
    expect(parseSite({ ...site(), visits: [visit] }).visits).toHaveLength(1);
  });

  it('law: whatever is put in, a site comes out or one clear line', () => {
    const anything = fc.oneof(
      fc.jsonValue({ maxDepth: 3 }),
      fc.constantFrom(35, 90, 0, 'B1', 'reflective', 'UTC', true),
    );
    const keys = fc.constantFrom(...siteKeys.map(({ key }) => key));
    const part = fc.dictionary(keys, anything, { maxKeys: 4 });
    const beamLike = part.map((more) => ({ ...beam, ...more }));
    const siteLike = fc
      .tuple(part, fc.array(fc.oneof(beamLike, anything), { maxLength: 3 }), fc.array(part, { maxLength: 2 }))
      .map(([top, beams, visits]) => ({ visits, ...top, beams }));
    const input = fc.oneof(
      siteLike,
      siteLike.map((value) => JSON.stringify(value)),
      anything,
      fc.string(),
    );
    fc.assert(
      fc.property(input, (value) => {
        const message = problem(value);
        expect(message).not.toContain('\n');
        expect(message).toMatch(/^(no problem|depot\.json.*: .+\.)$/);
      }),
      { seed: 3, numRuns: 1000 },
    );
  });
});
