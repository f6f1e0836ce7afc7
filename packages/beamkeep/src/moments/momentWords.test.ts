import { describe, expect, it } from 'vitest';
import { type BeamRecord, day, hour, minute } from '../columns/index.js';
import { parseSite } from '../site/index.js';
import { askedTime } from './askedTime.js';
import { beamMoment } from './beamMoment.js';
import type { Off } from './course.js';
import type { Told } from './covering.js';
import { isQuiet, momentWords } from './momentWords.js';

/** Monday 4 January 2027: ten weeks of one sample a minute, on clocks that go with UTC. */
const monday = Date.parse('2027-01-04T00:00:00Z');
const days = 70;
const clock = { offset: () => 0, dayNumber: (instant: number) => Math.floor(instant / day) };
const site = parseSite({
  format: 'beamkeep-site/1',
  beams: [{ id: 'B1', layout: 'reflective', separation: 62, signalColumn: 'b1', cleanAir: 100, covered: 0 }],
});
const [beam] = site.beams;
if (beam === undefined) throw new Error('no beam');

/** Each Tuesday haze from 06:45 on for an hour, in the sixth week fire; a knock at the end of the eighth week. */
const hazeDepth = (week: number): number => (week === 5 ? 50 : 10 + week);
function level(minuteOfLog: number): number {
  const week = Math.floor(minuteOfLog / (7 * 1440));
  const since = minuteOfLog - (week * 7 + 1) * 1440 - 405;
  const haze = since >= 0 && since < 60 ? hazeDepth(week) * Math.min(1, since / 12) : 0;
  return 99 - haze - (minuteOfLog >= 55 * 1440 + 600 ? 12 : 0);
}
const time = Float64Array.from({ length: days * 1440 }, (_, m) => monday + m * minute);
const share = time.map((_, m) => level(m) / 100);
const record: BeamRecord = {
  id: 'B1',
  trace: {
    time,
    until: time,
    level: share,
    low: Float32Array.from(share),
    high: Float32Array.from(share),
    spread: new Float32Array(time.length),
    count: new Uint32Array(time.length).fill(1),
  },
  intervalSeconds: 60,
  quantum: 0,
  assumed: [],
};
const tuesday = (week: number) => monday + (7 * week + 1) * day + 6 * hour + 46 * minute;
const offs: Off[] = Array.from({ length: 10 }, (_, week) => ({
  start: tuesday(week),
  end: tuesday(week) + 58 * minute,
  sign: 1,
  depth: hazeDepth(week) / 100,
  open: false,
}));
const dust = (weeks: readonly number[]): Told => ({
  cause: 'process-aerosol',
  start: tuesday(weeks[0] ?? 0),
  end: tuesday(weeks.at(-1) ?? 0) + 58 * minute,
  confidence: 0.97,
  summary: 'Ragged dips',
  episodes: weeks.map((week) => [tuesday(week), tuesday(week) + 58 * minute]),
});
const smoke: Told = { ...dust([5]), cause: 'smoke-like', confidence: 0.85, summary: 'A fire signal' };
const knock: Told = {
  cause: 'misalignment-step',
  start: monday + 55 * day + 10 * hour,
  end: monday + days * day - minute,
  confidence: 0.9,
  summary: 'The aim was changed',
};
const dirt: Told = { ...knock, cause: 'contamination', start: monday, summary: 'Dirt builds up' };
const findings = [dirt, dust([0, 1, 2, 3, 4]), smoke, dust([6, 7, 9]), knock];
const told = (at: string) => beamMoment(askedTime(at, 'UTC'), { beam, record, findings, offs }, site, clock);
const words = (at: string) => momentWords(beam, told(at), clock, 60);

describe('a time of day on a day of the week', () => {
  const answer = told('Tue 06:40');
  const said = words('Tue 06:40');
  it('is told of by the deepest of them', () => {
    expect(answer).toMatchObject({ instant: false, moment: tuesday(5) - 6 * minute, state: 'normal', sampled: true });
    expect(answer.course).toMatchObject({ kind: 'loss', start: tuesday(5), end: tuesday(5) + 58 * minute });
    expect(answer.signals.map((signal) => signal.state)).toEqual(['fire']);
  });
  it('counts the causes by the days on which each says most', () => {
    expect(answer.causes.map(({ cause, moments, findings: many }) => [cause, moments.length, many])).toEqual([
      ['process-aerosol', 8, 2],
      ['smoke-like', 1, 1],
    ]);
    expect(answer.unnamed).toEqual([tuesday(8) - 6 * minute]);
  });
  it('says what recurs', () =>
    expect(said.recurs).toBe(
      'The beam loses light about 06:40 on 10 of 10 Tuesdays and on 0 of 60 other days: it keeps to Tuesdays. As a rule it takes 15 % of clean air, for 58 min.',
    ));
  it('says what the signal did', () =>
    expect(said.signal).toBe(
      'The deepest begins on Tuesday 2027-02-09 06:46: from 1 % before, the obscuration grows to 51 % at 06:57, nine tenths of the way in 10 min or less. It lasts 58 min, the way back taking 60 s. The settings give fire at 06:55 (alarm threshold 35 % for 10 s). At 06:40 it stands at 1 %.',
    ));
  it('names the causes, the days of smoke by their dates, and what nothing was found for', () =>
    expect(said.causes).toEqual([
      'process-aerosol (97 %), at this hour on 8 days in 2 spells; of the last: Ragged dips.',
      'smoke-like (treat as fire, 85 %), at this hour on 1 day (2027-02-09): A fire signal.',
      'Nothing was found on 1 day (2027-03-02).',
    ]));
  it('warns of smoke before all, and of what the sampling hides', () => {
    expect(said.cautions[0]).toMatch(/counts as fire.*Neither raise the threshold nor lengthen the delay/);
    expect(said.cautions[1]).toBe(
      'Samples stand 60 s apart, further than the alarm delay of 10 s: what happens between them does not show.',
    );
  });
});

describe('a time of day of any day', () => {
  it('tells to which day of the week it keeps', () =>
    expect(words('06:40').recurs).toBe(
      'The beam loses light about 06:40 on 10 of 70 days. Of these 10, 10 are Tuesdays. As a rule it takes 15 % of clean air, for 58 min.',
    ));
  it('says where nothing comes', () => {
    expect(isQuiet(told('12:00'))).toBe(true);
    expect(words('12:00')).toMatchObject({
      recurs: 'On none of 70 days does the level leave its usual course about 12:00.',
      causes: ['contamination (90 %): Dirt builds up.', 'misalignment-step (90 %): The aim was changed.'],
    });
    expect(words('Wed 12:00').recurs).toBe(
      'On none of 10 Wednesdays, nor of 60 other days, does the level leave its usual course about 12:00.',
    );
  });
});

describe('an instant', () => {
  it('is told with the stretch there, and what recurs at its hour and day', () => {
    const said = words('2027-01-19 06:40');
    expect(said.signal).toMatch(
      /^It begins on Tuesday 2027-01-19 06:46: .* to 13 % .* The settings give no signal for it/,
    );
    expect(said.recurs).toMatch(/^The beam loses light about 06:40 on 10 of 10 Tuesdays/);
    expect(said.causes).toEqual(['process-aerosol (97 %): Ragged dips.', 'contamination (90 %): Dirt builds up.']);
    expect(said.cautions[0]).toMatch(/does not show that the next time is no fire/);
  });
  it('is told with a step near it, and with what begins there first', () => {
    const said = words('2027-02-28 10:02');
    expect(said.signal).toBe(
      'About Sunday 2027-02-28 10:02 the obscuration goes from 1 % to 13 % and stays there, nine tenths of the way in 60 s or less.',
    );
    expect(said.causes[0]).toBe('misalignment-step (90 %): The aim was changed.');
    expect(isQuiet(told('2027-02-28 10:02'))).toBe(false);
  });
  it('is told where the level keeps its course', () =>
    expect(words('2027-01-20 06:40').signal).toBe(
      'About Wednesday 2027-01-20 06:40 the obscuration stands steady at 1 %.',
    ));
});

describe('a log with little in it', () => {
  const cut = (from: number, to: number): BeamRecord => {
    const { trace } = record;
    const rows = <T extends Float64Array | Float32Array | Uint32Array>(column: T) => column.slice(from, to) as T;
    return {
      ...record,
      trace: {
        time: rows(trace.time),
        until: rows(trace.until),
        level: rows(trace.level),
        low: rows(trace.low),
        high: rows(trace.high),
        spread: rows(trace.spread),
        count: rows(trace.count),
      },
    };
  };
  const of = (short: BeamRecord, at: string) =>
    momentWords(
      beam,
      beamMoment(askedTime(at, 'UTC'), { beam, record: short, findings, offs }, site, clock),
      clock,
      60,
    );
  it('of three days says that they are too few', () =>
    expect(of(cut(0, 3 * 1440), '06:40').cautions).toContain(
      'The log holds 3 days at this hour: too few to tell a habit from chance.',
    ));
  it('of an hour says that it holds no sample then', () => {
    const said = of(cut(0, 60), '06:40');
    expect(said.recurs).toBe('The log holds no sample about 06:40 on any day.');
    expect(said.signal).toBe('The log holds no sample at that time.');
  });
});
