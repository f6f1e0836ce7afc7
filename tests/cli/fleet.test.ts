import { spawn } from 'node:child_process';
import { appendFile, mkdir, readFile, truncate, utimes, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { gzipSync } from 'node:zlib';
import { describe, expect, it } from 'vitest';
import { beamkeep, launcher, logText, scratch, siteText } from './run.js';

const { path } = scratch();

/** Bits of clean air, and a beam blocked for forty minutes. */
const blocked = (row: number) => (row >= 900 && row < 940 ? 98 : 0);

/** A folder with so many good logs of the three ways to lie in it, a bad one and one without a site. */
async function folderOf(name: string, logs: number, rows = 1500): Promise<string> {
  const folder = path(name);
  await mkdir(join(folder, 'depot'), { recursive: true });
  await mkdir(join(folder, 'months'));
  const lines = logText(rows, blocked).trimEnd().split('\n');
  for (let at = 0; at < logs; at++) {
    await writeFile(join(folder, `hall${at}.csv.gz`), gzipSync(logText(rows + at, at % 2 === 0 ? blocked : undefined)));
    await writeFile(join(folder, `hall${at}.site.json`), siteText());
  }
  await writeFile(join(folder, 'depot/log.csv'), lines.join('\n'));
  await writeFile(join(folder, 'depot/site.json'), siteText());
  await writeFile(join(folder, 'depot/events.csv'), 'time,beam,what\n');
  await writeFile(join(folder, 'months/a.csv'), lines.slice(0, 800).join('\n'));
  await writeFile(join(folder, 'months/b.csv'), [lines[0], ...lines.slice(800)].join('\n'));
  await writeFile(join(folder, 'months/site.json'), siteText());
  await writeFile(join(folder, 'bad.csv'), 'time,b1\n');
  await writeFile(join(folder, 'bad.site.json'), siteText());
  await writeFile(join(folder, 'lonely.csv'), 'time,b1\n');
  return folder;
}

/** The lines of a results file as sorted text. */
const linesIn = async (file: string): Promise<string[]> => {
  const text = await readFile(file, 'utf8').catch(() => '');
  return text
    .slice(0, text.lastIndexOf('\n') + 1)
    .split('\n')
    .filter((line) => line !== '')
    .sort();
};
const logsIn = async (file: string): Promise<string[]> =>
  (await linesIn(file)).map((line) => JSON.parse(line).log).sort();

describe('beamkeep fleet', () => {
  it('gives a line a log, however it lies in the folder; bad ones are told and the rest go on', async () => {
    const folder = await folderOf('all', 3);
    const out = path('all.jsonl');
    const { code, out: told, err } = await beamkeep(['fleet', folder, '--out', out, '--json']);
    expect(code).toBe(2);
    expect(err.trimEnd().split('\n').sort()).toEqual([
      'beamkeep: bad.csv:2: the log ends after its header: there is no line of data',
      'beamkeep: lonely.csv: no site file beside it: write lonely.site.json',
    ]);
    const logs = ['bad.csv', 'depot/log.csv', 'hall0.csv.gz', 'hall1.csv.gz', 'hall2.csv.gz', 'lonely.csv', 'months'];
    expect(await logsIn(out)).toEqual(logs);
    const visits = JSON.parse(told);
    expect(visits).toMatchObject({ format: 'beamkeep-visits/1', logs: 7 });
    expect(visits.unusable.map(({ log }: { log: string }) => log)).toEqual(['bad.csv', 'lonely.csv']);
    const ranks = visits.beams.map(({ severity }: { severity: string | null }) =>
      ['act', 'watch', 'note', null].indexOf(severity),
    );
    expect(ranks).toEqual(ranks.toSorted((a: number, b: number) => a - b));
    const asked = await beamkeep([
      'diagnose',
      join(folder, 'depot/log.csv'),
      '--site',
      join(folder, 'depot/site.json'),
      '--json',
    ]);
    const line = (await linesIn(out)).map((text) => JSON.parse(text)).find(({ log }) => log === 'depot/log.csv');
    expect(line.diagnosis).toEqual(JSON.parse(asked.out));
  });

  it('gives the same set of lines after a kill in the middle and another run', async () => {
    const folder = await folderOf('killed', 8, 20_000);
    const whole = path('whole.jsonl');
    await beamkeep(['fleet', folder, '--out', whole]);
    const out = path('killed.jsonl');
    const child = spawn(process.execPath, [launcher, 'fleet', folder, '--out', out, '--jobs', '1'], {
      stdio: 'ignore',
    });
    while ((await linesIn(out)).length < 2 && child.exitCode === null) await pause(5);
    child.kill('SIGKILL');
    await new Promise((resolve) => child.once('exit', resolve));
    const before = await linesIn(out);
    expect(before.length).toBeLessThan((await linesIn(whole)).length);
    // What a kill in the middle of a write would leave.
    await appendFile(out, '{"format":"beamkeep-fleet/1","version":"0.1.0","log":"hall7.cs');
    const again = await beamkeep(['fleet', folder, '--out', out]);
    expect(again.err).toContain('62 bytes of a torn last line dropped');
    expect(again.err).toContain(`${before.length} logs of 12 done before`);
    expect(await linesIn(out)).toEqual(await linesIn(whole));
    expect((await linesIn(out)).filter((line) => before.includes(line))).toEqual(before);
  });

  it('does nothing twice, but reads again what has changed or was cut off', async () => {
    const folder = await folderOf('again', 2);
    const out = path('again.jsonl');
    const first = await beamkeep(['fleet', folder, '--out', out]);
    const bytes = await readFile(out);
    const second = await beamkeep(['fleet', folder, '--out', out]);
    expect((await readFile(out)).equals(bytes)).toBe(true);
    expect({ code: second.code, out: second.out }).toEqual({ code: first.code, out: first.out });
    await writeFile(join(folder, 'lonely.site.json'), siteText());
    await writeFile(join(folder, 'lonely.csv'), logText(300));
    await utimes(join(folder, 'hall0.site.json'), 1, 1);
    expect((await beamkeep(['fleet', folder, '--out', out])).err).toContain('4 logs of 6 done before');
    await truncate(out, bytes.length - 1);
    expect((await beamkeep(['fleet', folder, '--out', out])).err).toContain('torn last line dropped');
  });

  it('is the same as a pipe step: names in, lines out', async () => {
    const folder = await folderOf('piped', 2);
    const names = ['hall0.csv.gz', './hall1.csv.gz', 'months', 'nowhere.csv'].map((name) =>
      name.startsWith('./') ? name : join(folder, name),
    );
    const { code, out } = await beamkeep(['fleet', '-', '--fail-on', 'note'], { input: `${names.join('\r\n')}\n` });
    expect(code).toBe(1);
    const lines = out
      .trimEnd()
      .split('\n')
      .map((line) => JSON.parse(line));
    expect(lines.map(({ error }) => error !== undefined)).toEqual([false, true, false, true]);
    expect(lines[3].error).toContain('no such file');
  });

  it('tells by --fail-on what was found, also in earlier runs', async () => {
    const folder = await folderOf('failing', 1);
    const args = ['fleet', folder, '--out', path('failing.jsonl'), '--fail-on', 'note'];
    expect((await beamkeep(args)).code).toBe(1);
    expect((await beamkeep(args)).code).toBe(1);
  });

  it('leaves a file of something else alone, and says what else it cannot use', async () => {
    const folder = await folderOf('refused', 1);
    const mine = path('mine.csv');
    await writeFile(mine, 'time,b1');
    for (const [args, says] of [
      [[folder, '--out', mine], 'holds something else'],
      [[folder], '--out <file> is missing'],
      [[path('none'), '--out', path('x.jsonl')], 'no such file or folder'],
      [[folder, '--out', join(folder, 'none/x.jsonl')], 'its folder is not there'],
      [[folder, '--out', path('x.jsonl'), '--jobs', '0'], '--jobs'],
      [['-', '--out', path('x.jsonl')], 'no --out'],
    ] as const) {
      const { code, out, err } = await beamkeep(['fleet', ...args]);
      expect({ code, out }).toEqual({ code: 2, out: '' });
      expect(err).toMatch(/^beamkeep: [^\n]+\n$/);
      expect(err).toContain(says);
    }
    expect(await readFile(mine, 'utf8')).toBe('time,b1');
  });
});
