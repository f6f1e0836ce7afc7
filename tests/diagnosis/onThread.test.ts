import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { availableParallelism, tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { diagnose } from 'beamkeep';
import type { LogSource, RowReader } from 'beamkeep/log';
import { logFiles } from 'beamkeep/node';
import { random } from 'beamkeep/simulation';
import { parseSite } from 'beamkeep/site';
import { strToU8 } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { threadedRows } from '../../packages/beamkeep/src/threadedRows.js';
import { inChunks } from '../log/rowsOf.js';
import { iso, monday } from './kit.js';

/** The thread's program as it is built (npm run build). */
const program = new URL('../../packages/beamkeep/dist/rowsThread.js', import.meta.url);

const beams = ['b1', 'b2'].map((signalColumn) => ({
  id: signalColumn.toUpperCase(),
  layout: 'reflective',
  separation: 60,
  signalColumn,
  temperatureColumn: 't',
}));
const site = parseSite({ beams });

/** A day and a half of two beams at 2 s: one is knocked, one is shaded; some lines stand twice, late or broken. */
function logText(): string {
  const { normal } = random(11);
  const lines = ['time,b1,b2,t'];
  for (let row = 0; row < 65_000; row++) {
    const time = iso(monday + row * 2000);
    const b1 = 99 - (row > 30_000 ? 6 : 0) + 0.2 * normal();
    const b2 = (row % 9000 > 8800 ? 30 : 98) + 0.3 * normal();
    const line = `${time},${b1.toFixed(1)},${row % 777 === 5 ? '' : b2.toFixed(1)},${(12 + 3 * Math.sin(row / 7000)).toFixed(1)}`;
    lines.push(line);
    if (row % 20_000 === 7) lines.push(line, 'torn');
    if (row % 15_000 === 9) lines.splice(-5, 0, lines.pop() ?? '');
  }
  return `${lines.join('\n')}\n`;
}

/** Tells whether a reader took the work. */
function watched(reader: RowReader) {
  const watch = { used: false };
  const elsewhere: RowReader = (...asked) => {
    const given = reader(...asked);
    watch.used ||= given !== undefined;
    return given;
  };
  return { watch, elsewhere };
}

let folder = '';
let path = '';
const text = logText();
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'beamkeep-'));
  path = join(folder, 'log.csv');
  await writeFile(path, text);
});
afterAll(() => rm(folder, { recursive: true }));

const answer = async (source: LogSource) => JSON.stringify((await diagnose(source, site)).diagnosis);
const file = async (elsewhere: RowReader): Promise<LogSource> => {
  const [only] = await logFiles([path]);
  if (only === undefined) throw new Error('no file');
  return { ...only, elsewhere };
};
const threads = availableParallelism() > 1;

describe('one log, one diagnosis to the last bit', () => {
  it.each([61, 1000, 8192])('read on a thread, %i rows at a time, or in pieces of any size', async (slotRows) => {
    const { watch, elsewhere } = watched(threadedRows({ program, leastBytes: 0, slotRows }));
    const plain = await answer({ name: path, bytes: inChunks(strToU8(text), [7919 * slotRows, 13]) });
    expect(plain).toContain('"cause":');
    expect(await answer(await file(elsewhere))).toBe(plain);
    expect(watch.used).toBe(threads);
  });
  it('without a thread: a program that is not there, or that does not begin', async () => {
    const plain = await answer({ name: path, bytes: inChunks(strToU8(text), [1 << 16]) });
    const missing = watched(threadedRows({ program: pathToFileURL(join(folder, 'none.js')), leastBytes: 0 }));
    expect(await answer(await file(missing.elsewhere))).toBe(plain);
    expect(missing.watch.used).toBe(false);
    const broken = join(folder, 'broken.mjs');
    await writeFile(broken, 'throw new Error("not today");\n');
    const { watch, elsewhere } = watched(threadedRows({ program: pathToFileURL(broken), leastBytes: 0 }));
    expect(await answer(await file(elsewhere))).toBe(plain);
    expect(watch.used).toBe(threads);
  });
  it('a short log is not worth one', async () => {
    const { watch, elsewhere } = watched(threadedRows({ program }));
    await answer(await file(elsewhere));
    expect(watch.used).toBe(false);
  });
});

describe('a thread', () => {
  const elsewhere = threadedRows({ program, leastBytes: 0 });
  it('says in the same words why a log cannot be used', async () => {
    const other = parseSite({ beams: [{ ...beams[0], signalColumn: 'b7' }] });
    const refusal = async (source: LogSource) =>
      diagnose(source, other).then(
        () => '',
        (error: Error) => `${error.constructor.name} ${error.message}`,
      );
    const plain = await refusal({ name: path, bytes: inChunks(strToU8(text), [1 << 16]) });
    expect(plain).toContain('b7');
    expect(await refusal(await file(elsewhere))).toBe(plain);
  });
  it('tells how far it is, to the last byte, and stops when it is told to', async () => {
    const told: number[] = [];
    const signal = { aborted: false };
    await diagnose(await file(elsewhere), site, { onProgress: (bytes) => told.push(bytes), signal });
    expect(told.at(-1)).toBe(text.length);
    expect(told).toEqual([...told].sort((a, b) => a - b));
    const stopped = diagnose(await file(elsewhere), site, { signal: { aborted: true } });
    await expect(stopped).rejects.toMatchObject({ name: 'AbortError' });
  });
});
