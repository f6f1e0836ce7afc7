import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import type { Environment, Io } from './io.js';
import { main } from './main.js';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'beamkeep-'));
  const rows = Array.from({ length: 500 }, (_, row) => `${1.8e9 + row * 60},${row > 200 && row < 260 ? 20 : 100}`);
  await writeFile(join(folder, 'log.csv'), `time,b1\n${rows.join('\n')}\n`);
  const beam = { id: 'B1', layout: 'reflective', separation: 40 };
  await writeFile(join(folder, 'site.json'), JSON.stringify({ format: 'beamkeep-site/1', beams: [beam] }));
});
afterAll(() => rm(folder, { recursive: true }));

async function* chunks(text: string): AsyncGenerator<Uint8Array> {
  yield new TextEncoder().encode(text);
}

/** Runs the command in this process and gives what it printed. */
async function run(args: readonly string[], { isTTY = false, env = {} as Environment, input = '' } = {}) {
  let out = '';
  let err = '';
  const io: Io = {
    stdin: chunks(input),
    stdout: { write: (text) => (out += text), isTTY, columns: 100 },
    stderr: { write: (text) => (err += text) },
    env,
  };
  return { code: await main(args, io), out, err };
}

const diagnose = () => ['diagnose', join(folder, 'log.csv'), '--site', join(folder, 'site.json')];
const escapeCode = '\u001b[';

describe('main', () => {
  it('uses colour on a terminal, and only there', async () => {
    expect((await run(diagnose(), { isTTY: true })).out).toContain(escapeCode);
    expect((await run(diagnose())).out).not.toContain(escapeCode);
  });
  it('honours NO_COLOR', async () => {
    expect((await run(diagnose(), { isTTY: true, env: { NO_COLOR: '1' } })).out).not.toContain(escapeCode);
  });
  it('prints JSON without colour, on a terminal too', async () => {
    const { code, out } = await run([...diagnose(), '--json'], { isTTY: true });
    expect(code).toBe(0);
    expect(JSON.parse(out)).toMatchObject({ format: 'beamkeep-diagnosis/1' });
  });
  it('reads standard input', async () => {
    const input = 'time,b1\n2027-01-01T00:00:00Z,100\n2027-01-01T00:01:00Z,99\n2027-01-01T00:02:00Z,100\n';
    const { code, out } = await run(['respond', '-', '--site', join(folder, 'site.json'), '--json'], { input });
    expect({ code, beams: JSON.parse(out).beams }).toMatchObject({ code: 0, beams: [{ id: 'B1' }] });
  });
  it('gives 1 for findings at or above --fail-on', async () => {
    expect((await run([...diagnose(), '--fail-on', 'note'])).code).toBe(1);
  });
  it('tells what a person can mend in one line, and gives 2', async () => {
    const { code, out, err } = await run(['diagnose', join(folder, 'none.csv'), '--site', join(folder, 'site.json')]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toMatch(/^beamkeep: .*none\.csv: no such file\n$/);
  });
  it('tells wrong arguments in one line without escapes, and gives 2', async () => {
    const { code, out, err } = await run(['diagnose', `--\u001b[31m\nx`]);
    expect({ code, out }).toEqual({ code: 2, out: '' });
    expect(err).toBe("beamkeep: unknown option '--\\u{1b}[31m x'\n");
  });
  it('lets our own faults show', async () => {
    const broken: Io = {
      stdin: chunks(''),
      stdout: {
        write: () => {
          throw new TypeError('ours');
        },
      },
      stderr: { write: () => true },
      env: {},
    };
    await expect(main(['convert', '1', '--from', 'percent', '--to', 'decibels'], broken)).rejects.toThrow('ours');
  });
  it('does not remember one run in the next', async () => {
    expect((await run([...diagnose(), '--fail-on', 'note'])).code).toBe(1);
    expect((await run(diagnose())).code).toBe(0);
  });
});
