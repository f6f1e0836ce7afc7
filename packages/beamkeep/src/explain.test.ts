import { describe, expect, it } from 'vitest';
import { UsageError } from './columns/index.js';
import { explain } from './explain.js';
import { logOfText } from './log/index.js';
import { parseSite } from './site/index.js';

const beams = ['B1', 'B2'].map((id) => ({
  id,
  layout: 'reflective',
  separation: 62,
  signalColumn: id,
  cleanAir: 100,
  covered: 0,
}));
const site = parseSite({ format: 'beamkeep-site/1', timeZone: 'Europe/Lisbon', beams });
const start = Date.parse('2027-01-04T00:00:00Z');
/** Two weeks, a sample every two minutes: quiet but for a board in the path of B1 on each Tuesday from 06:40 to 06:50. */
const log = logOfText(
  [
    'time,B1,B2',
    ...Array.from({ length: 14 * 720 }, (_, row) => {
      const clock = row % 720;
      const blocked = Math.floor(row / 720) % 7 === 1 && clock >= 200 && clock < 205;
      const noise = 0.2 * Math.sin(row * row * 0.7);
      return `${new Date(start + row * 120_000).toISOString()},${(blocked ? 40 : 99) + noise},${98 + noise}`;
    }),
  ].join('\n'),
);
const ask = (at: string, beam?: string) => explain(log, site, { at, ...(beam === undefined ? {} : { beam }) });

describe('explain', () => {
  it('answers in the form of its JSON output', async () => {
    const answer = await ask('Tue 06:40', 'B1');
    expect(answer).toMatchObject({
      format: 'beamkeep-explanation/1',
      asked: { at: 'Tue 06:40', instant: null, timeOfDay: '06:40:00', weekday: 2 },
      input: { dropped: 0 },
    });
    const [beam] = answer.beams;
    expect(answer.beams).toHaveLength(1);
    expect(beam).toMatchObject({
      id: 'B1',
      quiet: false,
      signal: { kind: 'loss', ongoing: false, lengthSeconds: 480 },
      recurs: {
        timeOfDay: '06:40:00',
        weekday: 2,
        onWeekday: { shown: 2, of: 2 },
        onOtherDays: { shown: 0, of: 12 },
      },
    });
    expect(beam?.signal?.before).toBeCloseTo(1, 0);
    expect(beam?.recurs.times).toHaveLength(2);
    expect(JSON.parse(JSON.stringify(answer))).toEqual(answer);
  });
  it('tells every beam where none is named', async () => {
    const { beams: all } = await ask('06:40');
    expect(all.map(({ id, quiet }) => [id, quiet])).toEqual([
      ['B1', false],
      ['B2', true],
    ]);
    expect(all[1]?.words.signal).toMatch(/stands steady at (1\.[89]|2(\.[12])?) %\.$/);
  });
  it('weighs one beam among all, as a diagnosis does', async () => {
    // Both beams are silent from 04:00 to 10:00 of the sixth day.
    const silent = logOfText(
      [
        'time,B1,B2',
        ...Array.from({ length: 14 * 144 }, (_, row) => {
          const level = row >= 5 * 144 + 24 && row < 5 * 144 + 60 ? '' : 99 + 0.2 * Math.sin(row * row * 0.7);
          return `${new Date(start + row * 600_000).toISOString()},${level},${level}`;
        }),
      ].join('\n'),
    );
    const [alone] = (await explain(silent, site, { at: '2027-01-09 07:00', beam: 'B1' })).beams;
    const [among] = (await explain(silent, site, { at: '2027-01-09 07:00' })).beams;
    expect(among?.causes[0]?.cause).toBe('data-gap');
    expect(alone).toEqual(among);
    const shown = alone?.causes[0]?.finding.evidence.find(({ measure }) =>
      measure.startsWith('how clearly another beam'),
    );
    expect(shown?.value).toBeGreaterThan(0.5);
  });
  it('tells of an instant, on the clocks of the site', async () => {
    const { asked, beams: all } = await ask('2027-01-12 06:44', 'B1');
    expect(asked).toMatchObject({ instant: '2027-01-12T06:44:00.000Z', timeOfDay: null, weekday: null });
    expect(all[0]?.signal?.start).toBe('2027-01-12T06:40:00.000Z');
  });
  it.each([
    ['yesterday', undefined, '"yesterday" is not a time'],
    [
      '2028-01-01 06:40',
      undefined,
      'lies outside the log: it goes from 2027-01-04T00:00:00.000Z to 2027-01-17T23:58:00.000Z',
    ],
    ['06:40', 'B3', '"B3" is no beam of the site; its beams are B1, B2'],
  ])('%s of %s is refused: %s', async (at, beam, says) => {
    await expect(ask(at, beam)).rejects.toThrow(UsageError);
    await expect(ask(at, beam)).rejects.toThrow(says);
  });
});
