import { spawnSync } from 'node:child_process';
import { closeSync, existsSync, openSync } from 'node:fs';
import { open } from 'node:fs/promises';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { beamkeep, launcher, logText, type Run, scratch, siteText } from './run.js';

const { path, write } = scratch();

/** One clear line, exit code 2, nothing on standard output, no trace of a stack. */
function refused({ code, out, err }: Run, ...says: readonly (string | RegExp)[]): void {
  expect(err).toMatch(/^beamkeep: [^\n]+\n$/);
  expect(err).not.toMatch(/\n {4}at /);
  for (const said of says) expect(err).toMatch(said);
  expect({ code, out }).toEqual({ code: 2, out: '' });
}

const commands = ['diagnose', 'respond'] as const;

describe.each(commands)('%s on logs that cannot be used', (command) => {
  const run = async (log: string, site = siteText()): Promise<Run> =>
    beamkeep([command, log, '--site', await write(`${command}.site.json`, site)]);

  it('an empty file', async () => refused(await run(await write('empty.csv', '')), 'empty.csv'));
  it('a header and nothing else', async () => refused(await run(await write('header.csv', 'time,b1\n')), 'header.csv'));
  it('no such column', async () =>
    refused(await run(await write('column.csv', logText(50, undefined, 'beam_1'))), 'b1', 'beam_1'));
  it('every value missing', async () => {
    const rows = logText(50).replace(/,[\d.]+$/gm, ',NaN');
    refused(await run(await write('missing.csv', rows)), /b1|B1/);
  });
  it('binary', async () => {
    const bytes = Uint8Array.from({ length: 50_000 }, (_, at) => (at * at * 31 + at * 7) % 256);
    refused(await run(await write('binary.csv', bytes)), 'binary.csv');
  });
  it('a folder', async () => refused(await run(path('')), 'folder'));
  it('a file that is not there', async () => refused(await run(path('nowhere.csv')), 'nowhere.csv', 'no such file'));
  it('named .gz and neither gzip nor a log', async () => {
    const bytes = Uint8Array.from({ length: 5000 }, (_, at) => (at * 97 + 13) % 251);
    refused(await run(await write('false.csv.gz', bytes)), 'false.csv.gz');
  });
  it('gzip of nothing', async () => refused(await run(await write('nothing.csv.gz', gzipSync(''))), 'nothing.csv.gz'));
  it('one line of 80 MB, in bounded memory', async () => {
    const log = path('line.csv');
    const file = await open(log, 'w');
    await file.write('time,b1\n');
    for (let piece = 0; piece < 80; piece++) await file.write('7'.repeat(1_000_000));
    await file.close();
    const site = await write('line.site.json', siteText());
    // The thread that reads ends as well: the process tells for both.
    const told = 'process.on("exit",()=>isMainThread&&console.log(process.resourceUsage().maxRSS))';
    const peak = `data:text/javascript,import{isMainThread}from"node:worker_threads";${told}`;
    const { code, out, err } = await beamkeep([command, log, '--site', site], { node: ['--import', peak] });
    refused({ code, out: '', err }, 'line.csv');
    expect(Number(out)).toBeLessThan(250_000); // kB; Node alone takes some 60 MB
  });
  it('standard input named twice', async () => {
    const site = await write('twice.site.json', siteText());
    refused(await beamkeep([command, '-', '-', '--site', site]), 'standard input');
    refused(await beamkeep([command, '-', '--site', '-']), 'standard input');
  });
  it('what cannot be read on standard input', async () => {
    const site = await write('input.site.json', siteText());
    refused(await beamkeep([command, '-', '--site', site]), 'standard input');
  });
});

describe('site files that cannot be used', () => {
  const beam = { id: 'B1', layout: 'reflective', separation: 40 };
  const cases: readonly (readonly [string, string, readonly (string | RegExp)[]])[] = [
    ['no JSON', '{ "name": ', ['site.json']],
    ['empty', '', ['site.json']],
    ['null', 'null', ['site.json']],
    ['a list', '[]', ['site.json']],
    ['no beams', siteText({}, { beams: [] }), ['beams']],
    ['two beams of one name', siteText({}, { beams: [beam, beam] }), ['B1']],
    ['a misspelt key', siteText({ alarmTreshold: 35 }), ['alarmTreshold', 'alarmThreshold']],
    ['a threshold below 0', siteText({ alarmThreshold: -1 }), ['alarmThreshold', '-1']],
    ['a threshold above 100', siteText({ faultThreshold: 101 }), ['faultThreshold', '101']],
    ['a threshold as text', siteText({ alarmThreshold: '35' }), ['alarmThreshold']],
    ['a zone that does not exist', siteText({}, { timeZone: 'Europe/Atlantis' }), ['Europe/Atlantis']],
    ['no separation', siteText({ separation: undefined }), ['separation']],
    ['an unknown layout', siteText({ layout: 'reflecting' }), ['layout', 'reflective']],
    ['a key of every object', siteText({ constructor: 1 }), ['constructor']],
  ];
  it.each(cases)('%s', async (_, site, says) => {
    const log = await write('log.csv', logText(50));
    refused(await beamkeep(['diagnose', log, '--site', await write('site.json', site)]), ...says);
  });
  it('a folder, a file that is not there, a log by mistake', async () => {
    const log = await write('log.csv', logText(50));
    refused(await beamkeep(['diagnose', log, '--site', path('')]), 'folder');
    refused(await beamkeep(['diagnose', log, '--site', path('none.json')]), 'none.json', 'no such file');
    refused(await beamkeep(['diagnose', log, '--site', log]), 'log.csv');
  });
});

describe('names that mean harm', () => {
  // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
  const control = /[\u0000-\u0009\u000b-\u001f\u007f-\u009f\u202a-\u202e]/;
  const escapes = 'b\u001b[2J\u001b]0;owned\u0007\u009b31m';
  const turned = 'owned \u202e1';

  it.each(commands)('%s prints no terminal escape from a site or a log', async (command) => {
    const lines = logText(300).trimEnd().split('\n');
    const rows = lines.map((line, at) => `${line},${at === 0 ? escapes : 1}`);
    const log = await write('evil.csv', `${rows.join('\n')}\n2027-01-12T00:00:00Z,${escapes},1\n`);
    const site = await write('evil.json', siteText({ id: turned }, { name: turned }));
    for (const args of [[], ['--json']]) {
      const { code, out, err } = await beamkeep([command, log, '--site', site, ...args]);
      expect({ code, err }).toEqual({ code: 0, err: '' });
      expect(out).not.toMatch(control);
      expect(out).toContain(args.length === 0 ? 'owned \\u{202e}1' : 'owned \\u202e1');
    }
  });
  it('errors print none either', async () => {
    const log = await write('plain.csv', logText(50));
    const other = await write('other.csv', logText(50, undefined, escapes));
    const site = await write('plain.json', siteText());
    for (const args of [
      [other, '--site', site],
      [escapes, '--site', site],
      [log, `--${escapes}`],
      [log, '--site', escapes],
      [log, '--site', await write('evil1.json', siteText({}, { name: escapes }))],
      [log, '--site', await write('evil2.json', siteText({ [escapes]: 1 }))],
      [log, '--site', await write('evil3.json', siteText({ signalColumn: turned }))],
    ]) {
      const run = await beamkeep(['diagnose', ...args]);
      refused(run);
      expect(run.err.trimEnd()).not.toMatch(control);
    }
  });
  it.each(['__proto__', 'constructor', 'toString', 'hasOwnProperty', 'valueOf'])(
    'a column and a beam named %s are names like any other',
    async (name) => {
      const log = await write('internal.csv', logText(300, undefined, name));
      const site = await write('internal.json', siteText({ id: name, signalColumn: name }));
      const { code, out, err } = await beamkeep(['diagnose', log, '--site', site, '--json']);
      expect({ code, err }).toEqual({ code: 0, err: '' });
      expect(JSON.parse(out).beams).toMatchObject([{ id: name, samples: 300 }]);
    },
  );
});

describe('a closed pipe', () => {
  it('ends in silence', async () => {
    const log = await write('pipe.csv', logText(3000));
    const site = await write('pipe.json', siteText());
    const beams = Array.from({ length: 400 }, (_, at) => ({
      id: `B${at}`,
      layout: 'reflective',
      separation: 40,
      signalColumn: 'b1',
    }));
    const many = await write('many.json', siteText({}, { beams }));
    for (const args of [
      ['diagnose', log, '--site', site],
      ['respond', log, '--site', many],
      ['respond', log, '--site', many, '--json'],
      ['--help'],
    ]) {
      const { code, err } = await beamkeep(args, { closeEarly: true });
      expect({ code, err }).toEqual({ code: 0, err: '' });
    }
  });
});

describe('a full disk', () => {
  it.runIf(existsSync('/dev/full'))('is told in one line', () => {
    const full = openSync('/dev/full', 'w');
    const { status, stderr } = spawnSync(process.execPath, [launcher, '--help'], { stdio: ['ignore', full, 'pipe'] });
    closeSync(full);
    expect({ status, said: stderr.toString() }).toEqual({
      status: 2,
      said: 'beamkeep: the output cannot be written (ENOSPC)\n',
    });
  });
});
