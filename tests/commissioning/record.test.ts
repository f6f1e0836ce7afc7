import { readFile } from 'node:fs/promises';
import {
  type CommissioningRecord,
  type FindingOut,
  parseDay,
  parseRecord,
  recordOf,
  recordPage,
} from 'beamkeep/commissioning';
import { describe, expect, it } from 'vitest';
import { commissioningFiles } from '../../packages/beamkeep/scripts/commissioningDay.js';
import { recordSchemaText } from '../../packages/beamkeep/scripts/recordSchemaText.js';
import { dayRecord, demoRecord, depot, emptyRecord, text } from './demo.js';

describe('the record of the demonstration day', () => {
  it('gathers every answer, puts forward what failed and lists what is missing', async () => {
    const record = await dayRecord({ log: ['../log.csv.gz'] });
    expect(record.format).toBe('beamkeep-record/1');
    expect(
      record.beams.map(({ id, aim, covered, proof }) => [id, aim?.verdict, covered?.verdict, proof?.verdict]),
    ).toEqual([
      ['B1', 'look again', 'fit', 'pass'],
      ['B2', 'good', 'fit', 'fail'],
      ['B3', 'look again', 'fit', 'pass'],
      ['B4', 'good', 'fit', undefined],
    ]);
    expect(record.attention.map(({ beam }) => beam)).toEqual(['B1', 'B2', 'B2', 'B3']);
    expect(record.missing).toEqual([{ beam: 'B4', words: 'proof: not there' }]);
    expect(record.log).toMatchObject({ from: '2027-02-01T00:00:00.000Z', dropped: 0 });
  });
  it('takes what the log says, where it was diagnosed: what asks for someone to go, and has not been looked at', async () => {
    const finding = { cause: 'smoke-like', severity: 'act', confidence: 0.4, summary: 'It grew.' } as const;
    const [start, end] = ['2027-03-16T06:20:00.000Z', '2027-03-16T06:50:00.000Z'];
    const rest = { start, end, ongoing: false, evidence: [], action: '', settles: '' };
    const beam = { from: start, to: end, samples: 31, forecast: null, assumed: [] };
    const record = await dayRecord(
      {},
      {
        format: 'beamkeep-diagnosis/1',
        beams: [
          {
            id: 'B3',
            ...beam,
            findings: [
              { ...finding, ...rest },
              { ...finding, ...rest, severity: 'note' },
            ],
          },
          { id: 'B4', ...beam, from: null, to: null, findings: [] },
        ],
        input: { lines: 32, dropped: 1, notes: [] },
      },
    );
    expect(record.findings).toEqual([{ beam: 'B3', ...finding, start, end, onSite: null }]);
    expect(record.log).toEqual({ from: start, to: end, lines: 32, dropped: 1 });
    expect(record.missing.map(({ words }) => words).join()).toMatch(/a look on site at findings .*: 1/);
    expect(parseRecord(JSON.stringify(record))).toEqual(record);
  });
  it('reads back what it wrote', async () => {
    const record = await demoRecord();
    expect(parseRecord(JSON.stringify(record), 'record.json')).toEqual(record);
    expect(recordPage(parseRecord(JSON.stringify(record)))).toBe(recordPage(record));
  });
  it('opens a record that was written before findings stood in one', async () => {
    const { findings: _, ...older } = await demoRecord();
    expect(parseRecord(JSON.stringify(older)).findings).toBeNull();
  });
  it('shows findings and what was found on site, and misses the look that nobody took', async () => {
    const finding: FindingOut = {
      beam: 'B1',
      cause: 'misalignment-step',
      severity: 'act',
      confidence: 0.94,
      start: '2027-03-09T05:20:00.000Z',
      end: '2027-05-31T23:59:00.000Z',
      summary: 'The head was knocked.',
      onSite: null,
    };
    const judged = { verdict: 'relabelled', cause: 'contamination', note: '<b>a web</b>' } as const;
    const day = parseDay(await text('day.json'));
    const site = await depot();
    const gathered = (findings: readonly FindingOut[]) =>
      recordOf(day, site, { answers: new Map(), troubles: [], log: null, findings, made: 0 });
    const words = (record: CommissioningRecord) => record.missing.map((point) => point.words).join('\n');
    expect(words(gathered([finding]))).toMatch(/a look on site at findings that ask for someone to go: 1/);
    const record = gathered([{ ...finding, onSite: judged }]);
    expect(words(record)).not.toMatch(/a look on site/);
    expect(parseRecord(JSON.stringify(record))).toEqual(record);
    const page = recordPage(record);
    expect(page).toContain(
      'it was something else, namely contamination. <span class="written">&lt;b&gt;a web&lt;/b&gt;</span>',
    );
    expect(page).toContain('<span class="noted">2027-03-09</span> <span class="noted">05:20</span>');
  });
  it('shows a day and names that nobody wrote down as missing', async () => {
    const day = parseDay(await text('day.json'));
    const record = recordOf(
      { ...day, date: '', people: [{ role: '', name: 'I.' }], impairment: { from: '', told: [{ who: '', time: '' }] } },
      await depot(),
      { answers: new Map(), troubles: [], log: null, made: 0 },
    );
    expect(record.missing.map((point) => point.words)).toContain('the day of the work');
    expect(recordPage(record)).toContain('Work of <span class="missing">a day not written down</span>');
    expect(recordPage(record)).toMatch(/out of service from<\/td><td><span class="missing">not written down/);
  });
  it('fills nothing in: an empty day is a list of gaps', async () => {
    const record = await emptyRecord();
    const words = record.missing.map((point) => point.words).join('\n');
    for (const gap of [
      'aim scan',
      'covered test',
      'proof',
      'who did the work',
      'impairment',
      'a log of the received signal',
    ])
      expect(words).toContain(gap);
    const page = recordPage(record);
    for (const gap of ['no aim scan', 'no covered test', 'no proof', 'nobody written down', 'no log'])
      expect(page).toContain(`<span class="missing">${gap}`);
  });
  it('tells a test that could not be used, and goes on', async () => {
    const record = await dayRecord({ beams: [{ id: 'B1', scan: 'scan-b1.csv', covered: 'scan-b1.csv' }] });
    expect(record.beams[0]?.aim).not.toBeNull();
    expect(record.beams[0]?.covered).toBeNull();
    expect(record.attention.map((point) => point.words).join(' ')).toMatch(/covered test: could not be used/);
  });
  it('refuses a beam that is not there, and one that stands twice', async () => {
    const naming = (...ids: readonly string[]) => dayRecord({ beams: ids.map((id) => ({ id })) });
    await expect(naming('B9')).rejects.toThrow('"B9" is no beam of this site');
    await expect(naming('B1', 'B1')).rejects.toThrow('B1 stands twice in the day file');
  });
});

describe('recordPage', () => {
  it('shows every text as text, wherever it comes from', async () => {
    const evil = '"><script>alert(1)</script>\u202e\u0007';
    const record = await dayRecord({
      remarks: [evil],
      deviations: [evil],
      people: [{ role: evil, name: evil, licence: evil }],
      impairment: { from: evil, told: [{ who: evil, time: evil }], fireWatch: { by: evil, from: evil } },
    });
    const everywhere = JSON.parse(JSON.stringify(record), (key, value) =>
      typeof value === 'string' && ['words', 'source', 'name', 'asks', 'id', 'beam', 'what', 'formula'].includes(key)
        ? `${value}${evil}`
        : value,
    );
    const page = recordPage(everywhere);
    expect(page).not.toContain('<script');
    for (const sign of ['\u202e', '\u0007']) expect(page).not.toContain(sign);
    expect(page).toContain('&lt;script&gt;');
  });
  it('leads every note to its formula and back, each number once and in order', async () => {
    const page = recordPage(await demoRecord());
    const led = [...page.matchAll(/href="#note-(\d+)"/g)].map(([, at]) => Number(at));
    const notes = [...page.matchAll(/<li id="note-(\d+)">/g)].map(([, at]) => Number(at));
    expect([...new Set(led)].sort((a, b) => a - b)).toEqual(notes);
    expect(notes).toEqual(notes.map((_, at) => at + 1));
    expect(page).toContain('from memory: look it up before you rely on it');
  });
  it('needs nothing from outside: no address but its own notes', async () => {
    const page = recordPage(await demoRecord());
    expect(page.match(/(?:src|href)="(?!#)/g)).toBeNull();
    expect(page.match(/url\(|@import|https?:\/\//g)).toBeNull();
  });
  it('has signature lines, cautions and page numbers', async () => {
    const page = recordPage(await demoRecord());
    for (const part of ['Commissioned by: name, date, signature', 'Cautions', 'counter(page) " of " counter(pages)'])
      expect(page).toContain(part);
  });
});

describe('parseRecord', () => {
  it.each([
    [
      (record: Record<string, unknown>) => ({ ...record, format: 'beamkeep-record/2' }),
      'format is "beamkeep-record/2"',
    ],
    [
      (record: Record<string, unknown>) => ({ ...record, beam: [] }),
      'unknown key "beam": the nearest known key is "beams"',
    ],
    [(record: Record<string, unknown>) => ({ ...record, missing: undefined }), 'missing is missing'],
    [(record: Record<string, unknown>) => ({ ...record, made: 'yesterday' }), 'made is "yesterday": give an instant'],
    [
      (record: Record<string, unknown>) => ({
        ...record,
        site: { name: 'x', timeZone: 'Moon', latitude: null, longitude: null },
      }),
      'site.timeZone is "Moon"',
    ],
  ])('refuses a record that breaks its form: %#', async (change, says) => {
    const record = JSON.parse(JSON.stringify(await demoRecord()));
    expect(() => parseRecord(JSON.stringify(change(record)), 'record.json')).toThrow(`record.json: ${says}`);
  });
});

describe('parseDay', () => {
  it.each([
    [{ scans: 'x' }, 'unknown key "scans": the nearest known key is "beams"'],
    [{ date: '20.1.2027' }, 'date is "20.1.2027": give a date as in 2027-01-20'],
    [{ beams: [{ id: 'B1', left: [] }] }, 'beams[0].left is a list: give one angle or two'],
    [
      { beams: [{ id: 'B1', structure: { span: 3 } }] },
      'beams[0].structure: unknown key "span": the nearest known key is "spanMetres"',
    ],
  ])('%j is refused', async (change, says) => {
    const day = { ...JSON.parse(await text('day.json')), ...change };
    expect(() => parseDay(day, 'day.json')).toThrow(`day.json: ${says}`);
  });
});

describe('files that are made', () => {
  it('the demonstration day is made by its script, byte for byte', async () => {
    for (const [name, made] of commissioningFiles(await depot())) expect(await text(name), name).toBe(made);
  });
  it('docs/record.schema.json says what the checks say; if not: scripts/write-record-schema.ts', async () => {
    const file = await readFile(new URL('../../packages/beamkeep/docs/record.schema.json', import.meta.url), 'utf8');
    expect(JSON.parse(file)).toEqual(JSON.parse(recordSchemaText()));
  });
});
