import { execFile, spawn } from 'node:child_process';
import { chmod, mkdir, readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { setTimeout as pause } from 'node:timers/promises';
import { describe, expect, it } from 'vitest';
import { beamkeep, launcher, scratch } from './run.js';

const { path } = scratch();

const simulate = (out: string, seed: number) =>
  [
    'simulate',
    '--out',
    out,
    '--force',
    '--days',
    '20',
    '--beams',
    '2',
    '--interval',
    '60',
    '--seed',
    `${seed}`,
  ] as const;

/** What lies under the names that were asked for; a draft has a hidden name. */
const contents = async (folder: string) =>
  Object.fromEntries(
    await Promise.all(
      (await readdir(folder))
        .filter((name) => !name.startsWith('.'))
        .map(async (name) => [name, (await readFile(join(folder, name))).toString('base64')] as const),
    ),
  );

describe('what is written', () => {
  it('is the old or the new file, whenever it is killed', async () => {
    const [one, other, out] = [path('one'), path('other'), path('out')];
    await beamkeep(simulate(one, 1));
    await beamkeep(simulate(other, 2));
    await beamkeep(simulate(out, 1));
    const [before, after] = [await contents(one), await contents(other)];
    for (let wait = 60; wait <= 600; wait += 60) {
      const child = spawn(process.execPath, [launcher, ...simulate(out, 2)], { stdio: 'ignore' });
      const gone = new Promise((resolve) => child.once('exit', resolve));
      await Promise.race([pause(wait), gone]);
      child.kill('SIGKILL');
      await gone;
      const found = await contents(out);
      expect(Object.keys(found)).toEqual(Object.keys(before));
      for (const [name, content] of Object.entries(found)) expect([before[name], after[name]]).toContain(content);
    }
  });

  it('stays as it was where no more may be written', async () => {
    const out = path('full');
    await beamkeep(simulate(out, 1));
    const before = await contents(out);
    // A limit of 8 kB a file, which a shell sets, stands for a full disk.
    const script = `ulimit -f 16; exec "$0" "$@"`;
    const told = await new Promise<{ code: unknown; err: string }>((resolve) => {
      execFile('sh', ['-c', script, process.execPath, launcher, ...simulate(out, 2)], (error, _, err) =>
        resolve({ code: error?.code, err }),
      );
    });
    expect(told.code).toBe(2);
    expect(told.err).toMatch(/^beamkeep: [^\n]*log\.csv\.gz: cannot be written: [^\n]+\n$/);
    expect(await contents(out)).toEqual(before);
    expect((await readdir(out)).filter((name) => name.startsWith('.'))).toEqual([]);
  });

  it('says so where the folder can only be read', async () => {
    const out = path('locked');
    await mkdir(out);
    await chmod(out, 0o555);
    // Root may write everywhere, unless it lays that privilege down.
    const lowered = process.getuid?.() === 0 ? ['setpriv', '--bounding-set=-dac_override'] : [];
    const [program = '', ...args] = [...lowered, process.execPath, launcher, ...simulate(out, 1)];
    const { code, err } = await new Promise<{ code: unknown; err: string }>((resolve) => {
      execFile(program, args, (error, _, err) => resolve({ code: error?.code, err }));
    });
    expect(code).toBe(2);
    expect(err).toMatch(/^beamkeep: [^\n]*cannot be written: this user may not write there\n$/);
    expect(await readdir(out)).toEqual([]);
  });
});
