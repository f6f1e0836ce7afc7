import { describe, expect, it } from 'vitest';
import { logOfText } from './log/index.js';
import { respond } from './respond.js';
import { parseSite } from './site/index.js';

const start = Date.parse('2027-01-01T00:00:00Z');
const iso = (seconds: number) => new Date(start + seconds * 1000).toISOString();
const site = (beams: object[], more: object = {}) =>
  parseSite({
    ...more,
    beams: beams.map((beam, i) => ({ id: `B${i + 1}`, layout: 'reflective', separation: 62, ...beam })),
  });
const log = (header: string, rows: readonly (readonly (number | string)[])[]) =>
  logOfText([`time,${header}`, ...rows.map(([t, ...cells]) => [iso(t as number), ...cells].join())].join('\n'));
const seconds = (count: number, row: (second: number) => readonly (number | string)[]) =>
  Array.from({ length: count }, (_, i) => [i, ...row(i)] as const);

describe('respond', () => {
  it('answers in the form of its JSON output', async () => {
    const given = {
      signalColumn: 'b1',
      cleanAir: 100,
      covered: 0,
      alarmThreshold: 35,
      alarmDelay: 10,
      faultThreshold: 90,
      faultDelay: 10,
    };
    const smoke = log(
      'b1',
      seconds(60, (s) => [s < 20 ? 98 : 60]),
    );
    expect(await respond(smoke, site([given], { timeFormat: 'iso' }))).toEqual({
      format: 'beamkeep-response/1',
      beams: [
        {
          id: 'B1',
          changes: [
            { time: iso(0), state: 'normal' },
            { time: iso(30), state: 'fire' },
          ],
          assumed: [],
        },
      ],
      input: { lines: 61, dropped: 0, notes: [] },
    });
  });

  it('names the defaults that bear on the decision', async () => {
    const { beams } = await respond(
      log(
        'b1',
        seconds(3, () => [98]),
      ),
      site([{}]),
    );
    expect(beams[0]?.assumed).toEqual([
      'alarmThreshold 35 %',
      'alarmDelay 10 s',
      'faultThreshold 90 %',
      'faultDelay 10 s',
      'cleanAir 100 %',
      'covered not measured: taken that nothing comes back',
    ]);
  });

  it('answers for several beams, each in its unit', async () => {
    const two = site([
      { signalColumn: 'a', signalUnit: 'decibels' },
      { signalColumn: 'b', signalUnit: 'obscuration', alarmThreshold: 25 },
      { signalColumn: 'c', signalUnit: 'counts', cleanAir: 2000, covered: 100 },
      { signalColumn: 'd', signalUnit: 'counts', cleanAir: 2000, covered: 100, coveredSubtracted: true },
    ]);
    const all = log(
      'a,b,c,d',
      seconds(60, (s) => (s < 20 ? [0, 0, 2000, 2000] : [-3, 25, 1320, 1320])),
    );
    const { beams } = await respond(all, two);
    expect(beams.map(({ id, changes }) => [id, changes.map(({ state }) => state).join()])).toEqual([
      ['B1', 'normal,fire'],
      ['B2', 'normal,fire'],
      ['B3', 'normal'],
      ['B4', 'normal,fire'],
    ]);
  });

  it('takes the clean-air reading of counts from the log, and says so', async () => {
    const { beams } = await respond(
      log(
        'b1',
        seconds(3600, (s) => [s < 3000 ? 2131 : 1300]),
      ),
      site([{ signalUnit: 'counts' }]),
    );
    expect(beams[0]?.changes).toEqual([
      { time: iso(0), state: 'normal' },
      { time: iso(3010), state: 'fire' },
    ]);
    expect(beams[0]?.assumed).toContain("cleanAir 2131 counts, from the log's first good stretch (2027-01-01)");
  });

  it('notes where it cannot be shown that a beam was blocked', async () => {
    const minutes = Array.from({ length: 30 }, (_, i) => [60 * i, i < 10 ? 99 : 1] as const);
    const { beams } = await respond(log('b1', minutes), site([{}]));
    expect(beams[0]?.changes.map(({ state }) => state)).toEqual(['normal', 'fire']);
    expect(beams[0]?.notes).toEqual([expect.stringMatching(/^once the loss became total .*2027-01-01T00:10:00.000Z/)]);
  });

  it('holds values of a log on change, and dates exactly', async () => {
    const lines = [
      [0, 99, 99],
      [100, 50, ''],
      [900, '', 98],
    ] as const;
    const { beams } = await respond(
      log('a,b', lines),
      site([{ signalColumn: 'a' }, { signalColumn: 'b' }], { sampling: 'on-change' }),
    );
    expect(beams[0]?.changes).toEqual([
      { time: iso(0), state: 'normal' },
      { time: iso(110), state: 'fire' },
    ]);
    expect(beams[1]?.changes).toHaveLength(1);
  });

  it('lets a value on change hold to the end of the log', async () => {
    const lines = [
      [0, 'a', 99],
      [100, 'a', 50],
      [900, 'b', 98],
    ] as const;
    const { beams } = await respond(
      log('name,value', lines),
      site([{ signalColumn: 'a' }, { signalColumn: 'b' }], { sampling: 'on-change' }),
    );
    expect(beams[0]?.changes.at(-1)).toEqual({ time: iso(110), state: 'fire' });
  });

  it('resets at a visit', async () => {
    const visits = [{ time: iso(60), work: 'reset' }];
    const smoke = log(
      'b1',
      seconds(120, (s) => [s < 40 ? 60 : 99]),
    );
    expect((await respond(smoke, site([{}], { visits }))).beams[0]?.changes).toEqual([
      { time: iso(0), state: 'normal' },
      { time: iso(10), state: 'fire' },
      { time: iso(60), state: 'normal' },
    ]);
  });

  it('models the slow gain only when asked', async () => {
    const slow = Array.from({ length: 3000 }, (_, i) => [60 * i, 100 - i / 70] as const);
    const state = async (options: object) =>
      (await respond(log('b1', slow), site([{}]), options)).beams[0]?.changes.at(-1)?.state;
    expect(await state({})).toBe('fire');
    expect(await state({ compensate: true })).toBe('fault');
    const { beams } = await respond(log('b1', slow), site([{}]), { compensate: true });
    expect(beams[0]?.assumed.at(-1)).toBe('compensation up to 1.12 dB, the most that standards allow (from memory)');
  });

  it('gives the same, however the log is cut into files', async () => {
    const rows = seconds(400, (s) => [s % 97 < 30 ? 55 : 99]);
    const whole = await respond(log('b1', rows), site([{ latching: false }]));
    const parts = [rows.slice(0, 133), rows.slice(133, 134), rows.slice(134)].map((part, i) => ({
      ...log('b1', part),
      name: `part${i}.csv`,
    }));
    expect((await respond(parts, site([{ latching: false }]))).beams).toEqual(whole.beams);
  });

  it('tells a beam without usable samples', async () => {
    const { beams } = await respond(
      log(
        'a,b',
        seconds(5, () => [99, '']),
      ),
      site([{ signalColumn: 'a' }, { signalColumn: 'b' }]),
    );
    expect(beams[1]?.changes).toEqual([]);
  });
});
