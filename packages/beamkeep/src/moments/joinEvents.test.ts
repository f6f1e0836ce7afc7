import { describe, expect, it } from 'vitest';
import type { BeamRecord, PanelEntry } from '../columns/index.js';
import { parseSite } from '../site/index.js';
import { clockWords } from './clockWords.js';
import type { Told } from './covering.js';
import { joinEvents } from './joinEvents.js';

const start = Date.parse('2027-03-01T00:00:00Z');
const minute = 60_000;
const iso = (time: number) => new Date(time).toISOString();
const beam = (id: string, more: object = {}) => ({
  id,
  layout: 'reflective',
  separation: 62,
  signalColumn: id,
  cleanAir: 100,
  covered: 0,
  ...more,
});
const site = parseSite({ format: 'beamkeep-site/1', beams: [beam('B1'), beam('B2')] });

/** Samples each 10 s for three days; a level in % by the second. */
function record(id: string, level: (second: number) => number): BeamRecord {
  const time = Float64Array.from({ length: 25_920 }, (_, row) => start + 10_000 * row);
  const share = time.map((_, row) => level(10 * row) / 100);
  const kept = (row: number) => !Number.isNaN(share[row] as number);
  const rows = [...time.keys()].filter(kept);
  const of = (values: Float64Array) => Float64Array.from(rows, (row) => values[row] as number);
  return {
    id,
    trace: {
      time: of(time),
      until: of(time),
      level: of(share),
      low: Float32Array.from(of(share)),
      high: Float32Array.from(of(share)),
      spread: new Float32Array(rows.length),
      count: new Uint32Array(rows.length).fill(1),
    },
    intervalSeconds: 10,
    quantum: 0,
    assumed: [],
  };
}

/** Fire at 10:00:10 and 40:00:10 after the start, a blocked beam at 20:00, no samples from 50 h on for an hour. */
const happens = (second: number): number => {
  const hour = second / 3600;
  if ((hour >= 10 && hour < 10.5) || (hour >= 40 && hour < 40.5)) return 50;
  if (hour >= 20 && hour < 20.2) return 2;
  if (hour >= 50 && hour < 51) return Number.NaN;
  return hour >= 60 && hour < 60.5 ? 120 : 99;
};
const hours = (h: number, seconds = 0): number => start + h * 3_600_000 + 1000 * seconds;
const found = (cause: string, from: number, to: number, confidence = 0.9): Told => ({
  cause,
  start: hours(from),
  end: hours(to),
  confidence,
  summary: `It was ${cause}`,
});
const findings = [
  found('smoke-like', 10, 10.5, 0.4),
  found('smoke-like', 40, 40.5, 0.4),
  found('obstruction', 20, 20.2),
  found('data-gap', 50, 51),
  found('contamination', 0, 72),
];
const known = [
  { record: record('B1', happens), findings },
  { record: record('B2', () => 98), findings: [] },
];
const entry = (time: number, what: string, of: string | undefined = 'B1'): PanelEntry =>
  of === undefined ? { time, what } : { time, beam: of, what };
const list = (ahead: number): PanelEntry[] =>
  [
    entry(hours(10, 10), 'fire'),
    entry(hours(12), 'reset'),
    entry(hours(20, 10), 'fault'),
    entry(hours(40, 10), 'fire'),
    entry(hours(50.5), 'own words'),
    entry(hours(52), 'reset'),
    entry(hours(60.2), 'fault'),
    entry(hours(65), 'fire', 'B2'),
    entry(hours(80), 'fault'),
  ].map((each) => ({ ...each, time: each.time + 1000 * ahead }));

describe('joinEvents', () => {
  const { clock, events } = joinEvents(list(75), known, site);
  it('estimates the clock from fire and fault, and says how', () => {
    expect(clock).toMatchObject({ offset: 75_000, source: 'estimated', matched: 3, of: 3, spread: 0 });
    expect(clockWords(clock)).toBe(
      "The panel's clock runs 75 s ahead of the log's (estimated): 3 of 3 signals that both may have seen agree with it, within 0 s of each other. Samples stand 10 s apart: it may be up to so much more.",
    );
  });
  it("puts each event on the log's clock", () =>
    expect(events.map(({ at }) => iso(at))).toEqual(list(0).map(({ time }) => iso(time))));
  it('tells state, obscuration and finding', () =>
    expect(events.map(({ state, obscuration, finding }) => [state, Math.round(obscuration), finding?.cause])).toEqual([
      ['fire', 50, 'smoke-like'],
      ['normal', 1, 'contamination'],
      ['fire', 98, 'obstruction'],
      ['fire', 50, 'smoke-like'],
      [undefined, Number.NaN, 'data-gap'],
      ['normal', 1, 'contamination'],
      ['normal', -20, 'contamination'],
      ['normal', 2, undefined],
      [undefined, Number.NaN, undefined],
    ]));
  it('says whether the log agrees, and what else it shows', () => {
    const [fire, reset, total, , gap, , bright, other, late] = events.map(({ words }) => words);
    expect(fire).toBe(
      'The log agrees: obscuration 50 %, and the settings give fire. smoke-like (40 %): It was smoke-like.',
    );
    expect(reset).toBe(
      'After it the settings give normal: obscuration 1 %. contamination (90 %): It was contamination.',
    );
    expect(total).toBe(
      'The log shows a total loss: obscuration 98 %. With samples 10 s apart it cannot show that the loss came as fast as a blocked beam does, so the settings give fire. obstruction (90 %): It was obstruction.',
    );
    expect(gap).toMatch(/^The log holds no sample then\. data-gap/);
    expect(bright).toMatch(
      /^The log shows no blocked beam then \(the settings give normal\): level 20 % above clean air; .* some equipment calls it a fault\./,
    );
    expect(other).toBe(
      'The log shows no fire then (the settings give normal): obscuration 2 %; the alarm threshold is 35 %. No finding lies near.',
    );
    expect(late).toBe('The log ends before.');
  });
  it('lets a reset of the list end a latched signal', () => {
    const without = joinEvents(
      list(75).filter(({ what }) => what !== 'reset'),
      known,
      site,
    );
    expect(without.events.map(({ state }) => state).slice(0, 2)).toEqual(['fire', 'fire']);
    expect(without.events.at(-3)?.state).toBe('fire');
  });
  it('says that a loss still stands after a reset', () => {
    const soon = joinEvents([entry(hours(10, 600), 'reset')], known, site, 0).events[0];
    expect(soon).toMatchObject({ state: 'fire' });
    expect(soon?.words).toMatch(
      /^The log shows the loss still standing: obscuration 50 %; the alarm threshold is 35 %\./,
    );
  });
  it('takes a distance that is given, and says when the log speaks for another', () => {
    const given = joinEvents(list(75), known, site, -300_000).clock;
    expect(given).toMatchObject({ offset: -300_000, source: 'given', matched: 0, of: 3 });
    expect(clockWords(given)).toMatch(
      /runs 300 s behind the log's \(given\): 0 of 3 signals .* The log itself speaks for another: runs 75 s ahead of the log's, with 3 of 3 signals\.$/,
    );
    expect(clockWords(joinEvents(list(75), known, site, 80_000).clock)).not.toContain('speaks for another');
  });
  it('takes times as they stand where nothing tells the distance', () => {
    const { clock: unknown, events: one } = joinEvents([entry(hours(10, 100), 'fire')], known, site);
    expect(unknown).toMatchObject({ source: 'unknown', offset: undefined, of: 1 });
    expect(one[0]?.at).toBe(hours(10, 100));
    expect(clockWords(unknown)).toMatch(
      /^The panel's clock cannot be told from the log's \(0 of 1 fit as they stand\)/,
    );
    expect(clockWords(joinEvents([entry(hours(65), 'fire')], known, site).clock)).toMatch(
      /no signal of the list has one/,
    );
  });
  it('tells of an event for all beams what the beam shows that says most', () => {
    const [all] = joinEvents([entry(hours(10, 10), 'fire', undefined)], known, site, 0).events;
    expect(all).toMatchObject({ beam: 'B1', state: 'fire' });
  });
  it('finds what is near while the clocks are not known to agree, and says how far', () => {
    const [near] = joinEvents([entry(hours(10) - 10 * minute, 'fault')], known.slice(0, 1), site).events;
    expect(near?.finding?.cause).toBe('contamination');
    const alone = [{ record: known[0]?.record ?? record('B1', happens), findings: findings.slice(0, 1) }];
    const [nearer] = joinEvents([entry(hours(10) - 10 * minute, 'fault')], alone, site).events;
    expect(nearer?.words).toMatch(/Nearest, 10 min away: smoke-like/);
    expect(joinEvents([entry(hours(10) - 10 * minute, 'fault')], alone, site, 0).events[0]?.finding).toBeUndefined();
  });
  it('tells coarse sampling where a shorter signal would not show', () => {
    const slow = parseSite({ format: 'beamkeep-site/1', beams: [beam('B1', { alarmDelay: 5 })] });
    const [quiet] = joinEvents([entry(hours(5), 'fire')], known.slice(0, 1), slow, 0).events;
    expect(quiet?.words).toContain('Samples stand 10 s apart: a shorter loss would not show.');
  });
});
