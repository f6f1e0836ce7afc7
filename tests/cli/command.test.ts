import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { beamkeep, logText, root, scratch, siteText } from './run.js';

const { path, write } = scratch();

/** Three days: quiet, and a blocked beam for forty minutes on the second. */
const blocked = (row: number) => (row >= 2000 && row < 2040 ? 98 : 0);

describe('beamkeep', () => {
  it('prints its help when asked and when nothing is asked', async () => {
    const asked = await beamkeep(['--help']);
    expect(asked).toMatchObject({ code: 0, err: '' });
    for (const command of ['diagnose', 'respond', 'convert', 'simulate']) expect(asked.out).toContain(`  ${command} `);
    expect(asked.out).toContain('Examples:');
    expect(await beamkeep([])).toEqual(asked);
    expect(await beamkeep(['help'])).toEqual(asked);
  });
  it.each(['diagnose', 'respond', 'convert', 'simulate'])('prints the help of %s with examples', async (command) => {
    const help = await beamkeep([command, '--help']);
    expect(help).toMatchObject({ code: 0, err: '' });
    expect(help.out).toMatch(new RegExp(`Examples:\n {2}beamkeep ${command} `));
    expect(help.out).toContain('--json');
    expect(await beamkeep(['help', command])).toEqual(help);
  });
  it('prints the version of its package', async () => {
    const { version } = JSON.parse(await readFile(join(root, 'packages/cli/package.json'), 'utf8'));
    expect(await beamkeep(['--version'])).toEqual({ code: 0, out: `${version}\n`, err: '' });
  });
  it.each([
    [['diagnoze'], "unknown command 'diagnoze' (Did you mean diagnose?)"],
    [['toString'], "unknown command 'toString'"],
    [['convert', '1', '--form', 'percent'], "unknown option '--form' (Did you mean --from?)"],
    [['convert', '1', '--from', 'percent', '--to', 'decibels', '--events', 'x'], "unknown option '--events'"],
    [['diagnose', 'log.csv'], '--site <file> is missing'],
    [['diagnose', '--site', 'x'], "missing required argument 'log'"],
    [['convert', '1', '2', '--from', 'percent', '--to', 'decibels'], 'too many arguments'],
    [['diagnose', 'x', '--site', 'y', '--fail-on', 'all'], 'Allowed choices are note, watch, act'],
    [['convert', 'x', '--from', 'percent', '--to', 'decibels'], '"x" is not a number'],
    [['convert', '1,5', '--from', 'percent', '--to', 'decibels'], 'the decimal sign here is a point'],
    [['convert', '1', '--from', 'percents', '--to', 'decibels'], 'percents'],
    [['convert', '-1', '--from', 'percent', '--to', 'decibels'], '-1'],
    [['convert', '1', '--from', 'percent', '--to', 'decibels-per-metre', '--path', '0'], 'path'],
    [['convert', '1', '--from', 'percent', '--to', 'decibels-per-metre'], 'path'],
  ] as const)('%j is refused: %s', async (args, says) => {
    const { code, out, err } = await beamkeep(args);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^beamkeep: [^\n]+\n$/);
    expect(err).toContain(says);
  });
});

describe('beamkeep convert', () => {
  it('prints one line for people', async () => {
    const args = ['convert', '35', '--from', 'percent', '--to', 'decibels-per-metre', '--path', '50'];
    const line = '35 % obscuration over 50 m of smoke is 0.0374173 dB/m\n';
    expect(await beamkeep(args)).toEqual({ code: 0, out: line, err: '' });
  });
  it('prints question and answer as JSON', async () => {
    const args = ['convert', '35%', '--from', 'percent', '--to', 'decibels-per-metre', '--path', '50', '--json'];
    const { code, out } = await beamkeep(args);
    const told = JSON.parse(out);
    expect(code).toBe(0);
    expect(Object.keys(told)).toEqual(['value', 'from', 'to', 'path', 'result']);
    expect(told).toMatchObject({ value: 35, from: 'percent', to: 'decibels-per-metre', path: 50 });
    expect(told.result).toBeCloseTo((-10 * Math.log10(0.65)) / 50, 12);
  });
  it('knows the infinite loss, both ways', async () => {
    const to = await beamkeep(['convert', '100', '--from', 'percent', '--to', 'decibels', '--json']);
    expect(JSON.parse(to.out).result).toBe('infinite');
    const from = await beamkeep(['convert', 'infinite', '--from', 'decibels', '--to', 'percent', '--json']);
    expect(JSON.parse(from.out).result).toBe(100);
  });
});

describe('beamkeep diagnose', () => {
  const files = async () =>
    [await write('log.csv', logText(4320, blocked)), await write('site.json', siteText())] as const;

  it('prints the diagnosis as JSON, keys in their order', async () => {
    const [log, site] = await files();
    const { code, out, err } = await beamkeep(['diagnose', log, '--site', site, '--json']);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const told = JSON.parse(out);
    expect(Object.keys(told)).toEqual(['format', 'beams', 'input']);
    expect(told.format).toBe('beamkeep-diagnosis/1');
    const [beam] = told.beams;
    expect(Object.keys(beam)).toEqual(['id', 'from', 'to', 'samples', 'findings', 'forecast', 'assumed']);
    expect(beam).toMatchObject({
      id: 'B1',
      from: '2027-01-11T00:00:00.000Z',
      to: '2027-01-13T23:59:00.000Z',
      samples: 4320,
    });
    expect(beam.assumed).toContain('alarmThreshold 35 %');
    expect(told.input).toMatchObject({ lines: 4321, dropped: 0 });
    const always = [
      'cause',
      'start',
      'end',
      'ongoing',
      'confidence',
      'severity',
      'summary',
      'evidence',
      'action',
      'settles',
    ];
    const sometimes = new Set(['episodes', 'during']);
    expect(beam.findings.length).toBeGreaterThan(0);
    for (const finding of beam.findings) {
      expect(Object.keys(finding).filter((key) => !sometimes.has(key))).toEqual(always);
      expect(finding.start).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{3}Z$/);
    }
    expect(await beamkeep(['diagnose', log, '--site', site, '--json'])).toEqual({ code, out, err });
  });
  it('tells it to people: plot, table, sentences, caution; no colour where there is no terminal', async () => {
    const [log, site] = await files();
    const { code, out, err } = await beamkeep(['diagnose', log, '--site', site], { env: { LANG: 'C', LC_ALL: 'C' } });
    expect({ code, err }).toEqual({ code: 0, err: '' });
    expect(out).toMatch(/^[\x20-\x7e\n]*$/);
    for (const said of [
      'Times in Europe/Lisbon',
      'Beam B1',
      'alarm at 35 %',
      'What to do:',
      'Forecast:',
      'Input: 4 321 lines',
      "the maker's instructions",
    ]) {
      expect(out).toContain(said);
    }
  });
  it('reads standard input, gzip or not, and several files as one log', async () => {
    const [log, site] = await files();
    const text = logText(4320, blocked);
    const whole = JSON.parse((await beamkeep(['diagnose', log, '--site', site, '--json'])).out).beams;
    for (const input of [text, gzipSync(text)]) {
      const { code, out } = await beamkeep(['diagnose', '-', '--site', site, '--json'], { input });
      expect({ code, beams: JSON.parse(out).beams }).toEqual({ code: 0, beams: whole });
    }
    const lines = text.split('\n');
    const first = await write('first.csv', lines.slice(0, 1500).join('\n'));
    const second = await write('second.csv.gz', gzipSync([lines[0], ...lines.slice(1500)].join('\n')));
    const { code, out } = await beamkeep(['diagnose', second, first, '--site', site, '--json']);
    expect({ code, beams: JSON.parse(out).beams }).toEqual({ code: 0, beams: whole });
  });
  it('takes the site from standard input', async () => {
    const [log] = await files();
    expect(await beamkeep(['diagnose', log, '--site', '-'], { input: siteText() })).toMatchObject({ code: 0, err: '' });
  });
  it('exits with 1 where a finding is at or above --fail-on', async () => {
    const [log, site] = await files();
    const { out } = await beamkeep(['diagnose', log, '--site', site, '--json']);
    const severities: string[] = JSON.parse(out).beams[0].findings.map(
      ({ severity }: { severity: string }) => severity,
    );
    for (const [at, level] of ['note', 'watch', 'act'].entries()) {
      const reached = severities.some((severity) => ['note', 'watch', 'act'].indexOf(severity) >= at);
      const { code } = await beamkeep(['diagnose', log, '--site', site, '--fail-on', level]);
      expect([level, code]).toEqual([level, reached ? 1 : 0]);
    }
  });
});

describe('beamkeep respond', () => {
  it('prints the changes of state, as JSON and for people', async () => {
    const log = await write(
      'fire.csv',
      logText(600, (row) => (row >= 300 && row < 330 ? 50 : 0)),
    );
    const site = await write('fire.json', siteText({ latching: false }));
    const { code, out, err } = await beamkeep(['respond', log, '--site', site, '--json']);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const told = JSON.parse(out);
    expect(told.format).toBe('beamkeep-response/1');
    expect(Object.keys(told.beams[0]).slice(0, 2)).toEqual(['id', 'changes']);
    expect(told.beams[0].changes).toEqual([
      { time: '2027-01-11T00:00:00.000Z', state: 'normal' },
      { time: '2027-01-11T05:01:00.000Z', state: 'fire' },
      { time: '2027-01-11T05:30:00.000Z', state: 'normal' },
    ]);
    const people = await beamkeep(['respond', log, '--site', site]);
    expect(people.out).toMatch(/2027-01-11 05:01:00 +fire +29 min\n/);
  });
});

describe('beamkeep simulate', () => {
  const few = [
    'simulate',
    '--seed',
    '7',
    '--days',
    '40',
    '--interval',
    '600',
    '--beams',
    '2',
    '--causes',
    'contamination',
  ];

  it('writes a log, its site and its truth, which say that they are invented', async () => {
    const out = path('new/folder');
    const { code, out: told, err } = await beamkeep([...few, '--out', out, '--json']);
    expect({ code, err }).toEqual({ code: 0, err: '' });
    const files = { log: join(out, 'log.csv.gz'), site: join(out, 'site.json'), truth: join(out, 'truth.json') };
    expect(JSON.parse(told)).toMatchObject({
      format: 'beamkeep-simulation/1',
      invented: true,
      seed: 7,
      beams: 2,
      files,
    });
    expect((await readdir(out)).sort()).toEqual(['log.csv.gz', 'site.json', 'truth.json']);
    const truth = JSON.parse(await readFile(files.truth, 'utf8'));
    expect(truth).toMatchObject({ format: 'beamkeep-truth/1', invented: true, log: 'log.csv.gz', site: 'site.json' });
    expect(await readFile(files.site, 'utf8')).toContain('invented');
    const diagnosis = await beamkeep(['diagnose', files.log, '--site', files.site, '--json']);
    expect(diagnosis).toMatchObject({ code: 0, err: '' });
    expect(JSON.parse(diagnosis.out).beams).toHaveLength(2);
  });
  it('gives the same bytes from the same seed, and others from another', async () => {
    const log = async (folder: string, ...more: readonly string[]) => {
      await beamkeep([...few, ...more, '--out', path(folder)]);
      return readFile(path(`${folder}/log.csv.gz`));
    };
    const first = await log('first');
    expect((await log('again')).equals(first)).toBe(true);
    expect((await log('other', '--seed', '8')).equals(first)).toBe(false);
  });
  it('does not write over files unless told to', async () => {
    const out = path('kept');
    await beamkeep([...few, '--out', out]);
    const before = await readFile(join(out, 'log.csv.gz'));
    const refused = await beamkeep([...few, '--out', out, '--seed', '9']);
    expect(refused).toMatchObject({ code: 2, out: '' });
    expect(refused.err).toMatch(/^beamkeep: .*log\.csv\.gz is there already; .*--force\n$/);
    expect((await readFile(join(out, 'log.csv.gz'))).equals(before)).toBe(true);
    expect(await beamkeep([...few, '--out', out, '--seed', '9', '--force'])).toMatchObject({ code: 0, err: '' });
    expect((await readFile(join(out, 'log.csv.gz'))).equals(before)).toBe(false);
  });
  it.each([
    [['--seed', 'seven'], 'must be a number'],
    [['--seed', '1.5'], 'whole number'],
    [['--beams', '0'], 'beams'],
    [['--days', '-1'], 'days'],
    [['--causes', 'gremlins'], 'gremlins'],
  ])('refuses %j', async (args, says) => {
    const { code, out, err } = await beamkeep(['simulate', '--out', path('refused'), ...args]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^beamkeep: [^\n]+\n$/);
    expect(err).toContain(says);
  });
  it('names the folder that it may not make', async () => {
    const file = await write('file', '');
    const { code, err } = await beamkeep([...few, '--out', file]);
    expect(code).toBe(2);
    expect(err).toMatch(/^beamkeep: .*file: cannot be written: .*\n$/);
  });
});
