import { mkdtemp, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Io } from '../io.js';
import { main } from '../main.js';

/* The commands of the commissioning day, on its demonstration files: aim, covered, thresholds, prove, cover-scale, record. */

const day = fileURLToPath(new URL('../../../../datasets/tram-depot/commissioning', import.meta.url));
const demo = (name: string): string => join(day, name);
const site = ['--site', demo('../site.json')];

let folder = '';
const path = (name: string): string => join(folder, name);
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'beamkeep-'));
});
afterAll(() => rm(folder, { recursive: true }));

async function run(...args: readonly string[]) {
  let out = '';
  let err = '';
  const io: Io = {
    stdin: (async function* () {})(),
    stdout: { write: (text) => (out += text), columns: 100 },
    stderr: { write: (text) => (err += text) },
    env: {},
  };
  return { code: await main(args, io), out, err };
}

/** Exit code 2 and one line that says so. */
async function refused(args: readonly string[], says: string) {
  const { code, out, err } = await run(...args);
  expect({ code, out }).toEqual({ code: 2, out: '' });
  expect(err).toMatch(/^beamkeep: [^\n]+\n$/);
  expect(err).toContain(says);
}

describe('beamkeep aim', () => {
  it('tells the flank, the margin and what the structure may do', async () => {
    const { code, out } = await run(
      'aim',
      demo('scan-b1.csv'),
      ...site,
      '--beam',
      'B1',
      '--left',
      '0.5',
      '--frame',
      '9.4',
    );
    expect(code).toBe(0);
    for (const words of ['look again', 'left on the flank', 'mm at the far end', 'height/60', 'Work at height'])
      expect(out).toContain(words);
  });
  it('takes two axes, and gives JSON', async () => {
    const { out } = await run('aim', demo('scan-b2.csv'), ...site, '--beam', 'B2', '--left', '0.05,-0.05', '--json');
    expect(JSON.parse(out)).toMatchObject({ format: 'beamkeep-aim/1', axes: ['pan', 'tilt'], verdict: 'good' });
  });
  it('refuses what it cannot use', async () => {
    await refused(['aim', demo('scan-b1.csv'), ...site], 'name one of B1, B2, B3, B4');
    await refused(['aim', demo('scan-b1.csv'), ...site, '--beam', 'B1', '--left', 'x'], 'one angle');
    for (const [given, says] of [
      ['--depth 0.3', '--gradient'],
      ['--span 18 --gradient 12', '--depth'],
      ['--depth 0.3 --gradient 12', '--span'],
      ['--member 9', '--warming'],
    ] as const)
      await refused(['aim', demo('scan-b1.csv'), ...site, '--beam', 'B1', ...given.split(' ')], says);
    await refused(['aim', demo('scan-b1.csv'), ...site, '--beam', 'B1', '--left', '0,0'], '2 angles');
    await refused(['aim', demo('nowhere.csv'), ...site, '--beam', 'B1'], 'no such file');
    await refused(['aim', demo('events.csv'), ...site, '--beam', 'B1'], 'events.csv: 0 of its lines');
  });
});

describe('beamkeep covered', () => {
  it('tells the residue and the drift', async () => {
    const { out } = await run('covered', demo('covered-b2.csv'), ...site, '--beam', 'B2');
    expect(out).toContain('Covered, the beam still reads');
    expect(out).toContain('The clean reading fell by 3.5');
  });
  it('takes a part of a log, in the zone of the site', async () => {
    const part = ['--from', '2027-01-20T10:05', '--to', '2027-01-20T10:07:00'];
    const { out } = await run('covered', demo('covered-b1.csv'), ...site, '--beam', 'B1', ...part, '--json');
    expect(JSON.parse(out)).toMatchObject({ format: 'beamkeep-covered/1', verdict: 'fit' });
    await refused(['covered', demo('covered-b1.csv'), ...site, '--beam', 'B1', '--from', 'noon'], '--from: "noon"');
  });
  it('refuses a log without a cover', () =>
    refused(
      ['covered', demo('covered-b1.csv'), ...site, '--beam', 'B1', '--to', '2027-01-20T10:05:50'],
      'nothing was covered',
    ));
});

describe('beamkeep thresholds', () => {
  it('prints units, limits with their sources, dirt and the table', async () => {
    const { out } = await run('thresholds', ...site, '--beam', 'B1');
    for (const words of ['decibels-per-metre', '(from memory)', '(read)', '18.8 %', '100  0.00625 dB/m'])
      expect(out).toContain(words);
  });
  it('takes own thresholds and separations', async () => {
    const { out } = await run('thresholds', ...site, '--beam', 'B1', '--percent', '60', '--metres', '15,33', '--json');
    const { beams } = JSON.parse(out);
    expect(beams[0].table.rows.map((row: { separation: number }) => row.separation)).toEqual([15, 33]);
    await refused(['thresholds', ...site, '--percent', '0'], 'above 0');
    await refused(['thresholds', ...site, '--percent', '120'], 'percent');
  });
});

describe('beamkeep prove', () => {
  const judged = [
    demo('proof-b2.csv'),
    ...site,
    '--sheet',
    demo('proof-b2.sheet.json'),
    '--events',
    demo('events.csv'),
  ];
  it('prints the sheet without a log', async () => {
    const { out } = await run('prove', ...site, '--beam', 'B1');
    expect(out).toContain('Must show: fire 10 to 15 s after the threshold is reached; hold it 20 s.');
    expect(out).toContain('[ ] pass  [ ] fail');
    const { out: asJson } = await run('prove', ...site, '--beam', 'B1', '--json');
    expect(JSON.parse(asJson)).toMatchObject({
      format: 'beamkeep-proof-plan/1',
      sheet: { format: 'beamkeep-proof-sheet/1' },
    });
  });
  it('judges a log, step by step', async () => {
    const { code, out } = await run('prove', ...judged, '--clock-offset', '140');
    expect(code).toBe(0);
    expect(out).toContain('6. fail  cover-at-once');
    expect(out).toContain('more than 2 s is not');
  });
  it('refuses a sheet of another beam, and one that is none', async () => {
    await refused(['prove', ...judged, '--beam', 'B1'], 'is a sheet of B2');
    await refused(['prove', ...site, '--sheet', demo('day.json')], 'day.json: format is "beamkeep-day/1"');
  });
});

describe('beamkeep cover-scale', () => {
  it('writes a scale in millimetres, and not over one that is there', async () => {
    const args = ['cover-scale', '--width', '100', '--out', path('scale.svg')];
    const { out } = await run(...args);
    expect(out).toContain('35 %         35 mm');
    expect(await readFile(path('scale.svg'), 'utf8')).toContain('width="166.00mm"');
    await refused(args, 'is there already');
    expect((await run(...args, '--force')).code).toBe(0);
  });
  it('counts the lobe where it is told', async () => {
    const args = [
      'cover-scale',
      '--diameter',
      '80',
      '--way',
      'middle',
      '--half-angle',
      '0.05',
      '--separation',
      '40',
      '--json',
    ];
    const { marks, lit } = JSON.parse((await run(...args)).out);
    expect(lit).toBe('by-the-lobe');
    expect(marks.at(-1).millimetres).toBeLessThan(76);
  });
  it('asks for what is missing', async () => {
    await refused(['cover-scale'], 'give --width');
    await refused(['cover-scale', '--width', '100', '--half-angle', '0.5'], 'belong together');
  });
});

describe('beamkeep record', () => {
  it('gathers the day, writes both files, and prints the page again from the record', async () => {
    const { code, out } = await run('record', demo('day.json'), '--page', path('r.html'), '--out', path('r.json'));
    expect(code).toBe(0);
    expect(out).toContain('Missing in this record\n  - B4: proof: not there');
    const page = await readFile(path('r.html'), 'utf8');
    expect(page).toMatch(/^<!doctype html>/);
    await run('record', path('r.json'), '--page', path('again.html'));
    expect(await readFile(path('again.html'), 'utf8')).toBe(page);
    await refused(['record', demo('day.json'), '--page', path('r.html')], 'is there already');
  });
  it('refuses what is no day file', () => refused(['record', demo('../site.json')], 'format is "beamkeep-site/1"'));
});
