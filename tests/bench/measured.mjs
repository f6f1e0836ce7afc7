// Runs programs in turn, again and again, and takes the medians: what else the machine does then meets all of them alike.
import { spawnSync } from 'node:child_process';
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const preload = new URL('usage.mjs', import.meta.url).href;

/** One run of a Node program: seconds of wall clock and of processor, and peak memory. */
function measuredOnce(folder, args) {
  const usage = join(folder, 'usage.json');
  const { status, stderr } = spawnSync(process.execPath, ['--import', preload, ...args], {
    env: { ...process.env, BENCH_USAGE: usage, NO_COLOR: '1' },
    stdio: ['ignore', 'ignore', 'pipe'],
    encoding: 'utf8',
  });
  if (status !== 0) throw new Error(`node ${args.join(' ')}\n${stderr}`);
  return JSON.parse(readFileSync(usage, 'utf8'));
}

const median = (values) => values.toSorted((a, b) => a - b)[values.length >> 1];

/**
 * Medians of several runs of each program, in turn.
 *
 * @param folder for what the runs leave behind
 * @param programs arguments of node, by name
 * @param runs how often
 */
export function measured(folder, programs, runs) {
  const all = Object.fromEntries(Object.keys(programs).map((name) => [name, []]));
  for (let run = 0; run < runs; run++) {
    for (const [name, args] of Object.entries(programs)) all[name].push(measuredOnce(folder, args));
  }
  return Object.fromEntries(
    Object.entries(all).map(([name, results]) => [
      name,
      Object.fromEntries(['wall', 'processor', 'peakMiB'].map((key) => [key, median(results.map((r) => r[key]))])),
    ]),
  );
}

/** What a Node program says: its one line of JSON. */
export function said(args) {
  const { status, stdout, stderr } = spawnSync(process.execPath, args, { encoding: 'utf8' });
  if (status !== 0) throw new Error(`node ${args.join(' ')}\n${stderr}`);
  return JSON.parse(stdout);
}

/** Root of the workspace. */
export const root = fileURLToPath(new URL('../..', import.meta.url));
