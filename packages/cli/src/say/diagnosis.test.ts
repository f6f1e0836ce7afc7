import type { DiagnosisJson, FindingJson } from 'beamkeep';
import type { BeamRecord } from 'beamkeep/columns';
import { type Beam, parseSite } from 'beamkeep/site';
import { describe, expect, it } from 'vitest';
import { ascii } from '../plot/cells.js';
import { diagnosisText } from './diagnosis.js';
import { palette } from './palette.js';
import { unsafe } from './unsafe.js';

const finding = (told: Partial<FindingJson>): FindingJson => ({
  cause: 'contamination',
  start: '2027-01-09T00:00:00.000Z',
  end: '2027-04-30T23:59:00.000Z',
  ongoing: true,
  confidence: 0.93,
  severity: 'watch',
  summary: 'Loss has grown slowly and steadily, as dirt does',
  evidence: [{ measure: 'slope', value: -0.063333, unit: '%/day' }],
  action: 'Clean it at the next visit.',
  settles: 'If the level returns by 7 %, it was dirt.',
  ...told,
});

const siteOf = (ids: readonly string[]) => {
  const { beams, ...site } = parseSite({
    format: 'beamkeep-site/1',
    timeZone: 'Europe/Lisbon',
    beams: [{ id: 'B', layout: 'reflective', separation: 62, signalColumn: 'b1' }],
  });
  const [beam] = beams as [Beam];
  return { ...site, name: 'Depot \u001b]0;x\u0007', beams: ids.map((id) => ({ ...beam, id })) };
};

const record = (id: string): BeamRecord => {
  const time = Float64Array.from({ length: 120 }, (_, day) => Date.parse('2027-01-01T12:00:00Z') + day * 86_400_000);
  const level = Float64Array.from(time, (_, day) => 1 - 0.0006 * day);
  return {
    id,
    trace: {
      time,
      until: time,
      level,
      low: Float32Array.from(level),
      high: Float32Array.from(level),
      spread: new Float32Array(time.length),
      count: new Uint32Array(time.length).fill(1),
    },
    intervalSeconds: 86_400,
    quantum: 0,
    assumed: [],
  };
};

const gaps = Array.from({ length: 9 }, (_, at) =>
  finding({
    cause: 'data-gap',
    severity: 'note',
    ongoing: false,
    start: `2027-02-0${at + 1}T02:00:00.000Z`,
    end: `2027-02-0${at + 1}T02:30:00.000Z`,
    summary: `No samples on day ${at + 1}.`,
  }),
);

const told = (id: string, findings: readonly FindingJson[]): DiagnosisJson['beams'][number] => ({
  id,
  from: '2027-01-01T12:00:00.000Z',
  to: '2027-04-30T12:00:00.000Z',
  samples: 172_800,
  findings,
  forecast: { obscuration: 35, ends: 'alarm', median: '2027-10-02', low: '2027-08-20', high: '2027-12-15' },
  assumed: ['alarmThreshold 35 %', 'alarmDelay 10 s'],
});

const text = (beams: DiagnosisJson['beams'], colour = false) =>
  diagnosisText(
    {
      format: 'beamkeep-diagnosis/1',
      beams,
      input: { lines: 120, dropped: 1, notes: [{ line: 52, lines: 1, what: 'not a number: "abc"' }] },
    },
    {
      site: siteOf(beams.map(({ id }) => id)),
      records: beams.map(({ id }) => record(id)),
    },
    { width: 80, colours: palette(colour), cells: ascii },
  );

const flat = (lines: string) => lines.replace(/\s+/g, ' ');

describe('diagnosisText', () => {
  const smoke = finding({
    cause: 'smoke-like',
    severity: 'act',
    confidence: 0.4,
    ongoing: false,
    start: '2027-03-04T12:01:00.000Z',
    end: '2027-03-04T13:39:00.000Z',
    summary: 'Loss grew to 22 % in 40 min.',
    during: 'tested',
    episodes: [['2027-03-04T12:01:00.000Z', '2027-03-04T13:39:00.000Z']],
  });
  const mist = finding({ cause: 'condensation', severity: 'note', confidence: 0.3 });
  const whole = text([told('B1', []), told('B2', [mist, ...gaps, finding({}), smoke])]);

  it('names the site and the zone', () => {
    expect(whole).toMatch(/^Depot \\u\{1b\}\]0;x\\u\{07\}\nTimes in Europe\/Lisbon\. /);
  });
  it('puts the most pressing beam and finding first', () => {
    const rows = whole.split('\n');
    const at = (pattern: RegExp) => rows.findIndex((row) => pattern.test(row));
    expect(at(/^ {2}B2 +act +smoke-like, contamination, data-gap, condensation\?$/)).toBeGreaterThan(0);
    expect(at(/^ {2}B1 +nothing found$/)).toBeGreaterThan(at(/^ {2}B2 +act/));
    expect(at(/^ {2}act +2027-03-04 12:01 to 13:39 +cannot be told from smoke +40 %$/)).toBeGreaterThan(0);
    expect(at(/^ {2}watch +since 2027-01-09 +dirt on the reflector or the optics +93 %$/)).toBeGreaterThan(
      at(/^ {2}act/),
    );
    expect(at(/^ {2}note +2027-02-01/)).toBeGreaterThan(at(/^ {2}watch/));
    expect(at(/^ {2}note +since .* mist/)).toBeGreaterThan(at(/^ {2}note +2027-02-06/));
  });
  it('says summary, evidence, visit, action and what settles it', () => {
    expect(flat(whole)).toContain(
      '2027-03-04 12:01 to 13:39, treat as fire (40 %): Loss grew to 22 % in 40 min. slope -0.0633 %/day; came 1 time; ' +
        'while the beam was tested What to do: Clean it at the next visit. What settles it: If the level returns by 7 %',
    );
  });
  it('counts notes beyond six and gives their advice once', () => {
    expect(whole).toMatch(/note +and 3 more +samples missing or stuck/);
    expect(whole.match(/No samples on day/g)).toHaveLength(6);
    expect(whole.match(/What to do/g)).toHaveLength(4);
  });
  it('tells forecast, assumptions, input and caution', () => {
    expect(flat(whole)).toContain('about 2027-10-02, with 80 % probability between 2027-08-20 and 2027-12-15.');
    expect(flat(whole)).toContain('Assumed: alarmThreshold 35 %; alarmDelay 10 s.');
    expect(flat(whole)).toContain('Input: 120 lines, 1 dropped. line 52: not a number: "abc"');
    expect(flat(whole)).toMatch(/Local codes, the maker's instructions and licensed practice come first\. .*$/);
  });
  it('draws the level of each beam', () => expect(whole.match(/alarm at 35 %/g)).toHaveLength(2));
  it('sends no control character, whatever the names', () => {
    const evil = '\u001b[2J\u009b31m\u202e\r';
    const told2 = told(evil, [finding({ summary: evil, action: evil, settles: evil, during: evil })]);
    expect(text([{ ...told2, assumed: [evil] }, told('B', [])]).replaceAll('\n', '')).not.toMatch(unsafe);
  });
  it('keeps tables straight with colour', () => {
    // biome-ignore lint/suspicious/noControlCharactersInRegex: colours are escape sequences
    const sequences = /\u001b\[\d+m/g;
    const coloured = text([told('B1', []), told('B2', [mist, ...gaps, finding({}), smoke])], true);
    expect(coloured).toMatch(sequences);
    expect(coloured.replace(sequences, '')).toBe(whole);
  });
  it('tells a beam without samples', () => {
    const none = { ...told('B1', []), from: null, to: null, samples: 0, forecast: null };
    expect(text([none])).toContain('Beam B1  no usable samples');
  });
});
