import { spawn } from 'node:child_process';
import { existsSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll } from 'vitest';

/** The project's folder. */
export const root = fileURLToPath(new URL('../..', import.meta.url));
/** The command's launcher. */
export const launcher = join(root, 'packages/cli/bin/beamkeep.js');
const built = join(root, 'packages/cli/dist/run.js');

/** What a run of the command gave. */
export interface Run {
  readonly code: number | null;
  readonly out: string;
  readonly err: string;
}

export interface RunSettings {
  /** Text or bytes for standard input. */
  readonly input?: string | Uint8Array;
  readonly env?: Readonly<Record<string, string>>;
  /** Options of Node itself. */
  readonly node?: readonly string[];
  /** Closes standard output after the first bytes that arrive, as `| head` does. */
  readonly closeEarly?: boolean;
}

/** Runs the built command as a person does: another process, real streams. */
export function beamkeep(args: readonly string[], settings: RunSettings = {}): Promise<Run> {
  if (!existsSync(built)) throw new Error(`${built} is missing: run "npm run build" first`);
  const { input, env = {}, node = [], closeEarly = false } = settings;
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [...node, launcher, ...args], { cwd: root, env: { ...process.env, ...env } });
    const out: Uint8Array[] = [];
    const err: Uint8Array[] = [];
    child.stdout.on('data', (bytes: Uint8Array) => {
      out.push(bytes);
      if (closeEarly) child.stdout.destroy();
    });
    child.stderr.on('data', (bytes: Uint8Array) => err.push(bytes));
    child.on('error', reject);
    child.on('close', (code) =>
      resolve({ code, out: Buffer.concat(out).toString(), err: Buffer.concat(err).toString() }),
    );
    child.stdin.on('error', () => undefined); // it may refuse to read on
    child.stdin.end(input ?? '');
  });
}

/** A folder for the tests of a file, gone afterwards; gives paths in it and writes files there. */
export function scratch() {
  let folder = '';
  beforeAll(async () => {
    folder = await mkdtemp(join(tmpdir(), 'beamkeep-'));
  });
  afterAll(() => rm(folder, { recursive: true, force: true }));
  const path = (name: string) => join(folder, name);
  const write = async (name: string, content: string | Uint8Array): Promise<string> => {
    await writeFile(path(name), content);
    return path(name);
  };
  return { path, write };
}

/** A site file with one beam of the column `b1`, some of it changed. */
export const siteText = (beam: object = {}, site: object = {}): string =>
  JSON.stringify({
    format: 'beamkeep-site/1',
    name: 'Tram depot (invented)',
    timeZone: 'Europe/Lisbon',
    beams: [{ id: 'B1', layout: 'reflective', separation: 40, signalColumn: 'b1', ...beam }],
    ...site,
  });

/**
 * A log of one beam at one minute: clean air with a little noise of no account, and what `loss` takes of it.
 *
 * @param loss obscuration [%] of a row
 */
export function logText(rows: number, loss: (row: number) => number = () => 0, column = 'b1'): string {
  const start = Date.parse('2027-01-11T00:00:00Z');
  const lines = Array.from({ length: rows }, (_, row) => {
    const noise = 0.2 * Math.sin(row * row * 0.7);
    return `${new Date(start + row * 60_000).toISOString()},${(100 - loss(row) + noise).toFixed(2)}`;
  });
  return `${[`time,${column}`, ...lines].join('\n')}\n`;
}
