import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import type { LogSource } from 'beamkeep/log';
import { logFiles } from 'beamkeep/node';
import { strToU8 } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inChunks, type RowsRead, rowsOf, siteOf } from './rowsOf.js';

/* Both ways of unzipping: the library's own, for browsers, and the one of Node, which files come with. */

const start = Date.UTC(2027, 0, 4);
const lines = (from: number, to: number): string =>
  Array.from(
    { length: to - from },
    (_, at) => `${new Date(start + (from + at) * 1000).toISOString()},${(from + at) % 97}\n`,
  ).join('');
const whole = strToU8(`time,b1\n${lines(0, 20_000)}`);
const members = new Uint8Array([
  ...gzipSync(strToU8(`time,b1\n${lines(0, 5000)}`)),
  ...gzipSync(strToU8(lines(5000, 9000))),
  ...gzipSync(strToU8(lines(9000, 20_000))),
]);

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'beamkeep-'));
});
afterAll(() => rm(folder, { recursive: true }));

async function read(bytes: Uint8Array, name: string): Promise<{ browser: RowsRead; node: RowsRead }> {
  const source: LogSource = { name, bytes: inChunks(bytes, [1, 3, 5000, 333]) };
  const path = join(folder, name);
  await writeFile(path, bytes);
  const site = siteOf(['b1']);
  return { browser: await rowsOf(source, site), node: await rowsOf(await logFiles([path]), site) };
}

describe('gzip', () => {
  it.each([
    ['one member', gzipSync(whole), 'a.csv.gz'],
    ['several members in a row', members, 'b.csv.gz'],
    ['zipped, whatever its name', gzipSync(whole), 'c.csv'],
    ['named so and not zipped', whole, 'd.csv.gz'],
  ])('%s', async (_, bytes, name) => {
    const { browser, node } = await read(bytes, name);
    expect(browser.time.length).toBe(20_000);
    expect(browser.columns[0]?.[19_999]).toBe(19_999 % 97);
    expect(node).toEqual(browser);
  });

  it.each([
    ['cut short', members.subarray(0, members.length - 6000)],
    [
      'damaged',
      members.map((byte, at) => (at > members.length - 8000 && at < members.length - 7900 ? byte ^ 0x5a : byte)),
    ],
  ])('%s: what came before was read, and that is told', async (name, bytes) => {
    const { browser, node } = await read(bytes, `${name}.csv.gz`);
    for (const { time, input } of [browser, node]) {
      expect(time.length).toBeGreaterThan(9000);
      expect(time.length).toBeLessThan(20_000);
      expect(input.notes.map(({ what }) => what)).toContain(
        'the gzip data is damaged or cut short: what came before was read',
      );
    }
  });

  it.each([
    ['whole', 0, 250_000],
    ['its last byte damaged: a tenth is lost at most', 1, 225_000],
  ])('more than is unzipped ahead, %s', async (_, damage, least) => {
    const long = gzipSync(strToU8(`time,b1\n${lines(0, 250_000)}`));
    long[long.length - 1] = (long.at(-1) ?? 0) ^ damage;
    const path = join(folder, 'long.csv.gz');
    await writeFile(path, long);
    const { time, input } = await rowsOf(await logFiles([path]), siteOf(['b1']));
    expect(time.length).toBeGreaterThanOrEqual(least);
    expect(time.at(-1)).toBe(start + 1000 * (time.length - 1)); // None in between is lost.
    expect(input.notes.filter(({ what }) => what.startsWith('the gzip data'))).toHaveLength(damage);
  });

  it('zipped twice is refused', async () => {
    const twice = gzipSync(gzipSync(whole));
    await expect(read(twice, 'e.csv.gz')).rejects.toThrow('e.csv.gz: this is gzipped twice: unzip it once');
  });

  it('a bomb of one endless line is refused before it goes off', async () => {
    const bomb = gzipSync(new Uint8Array(40 << 20).fill(49));
    const message = 'bomb.gz:1: a line longer than 1 MiB';
    await expect(rowsOf({ name: 'bomb.gz', bytes: inChunks(bomb, [65_536]) }, siteOf(['b1']))).rejects.toThrow(message);
    await writeFile(join(folder, 'bomb.gz'), bomb);
    await expect(logFiles([join(folder, 'bomb.gz')]).then((files) => rowsOf(files, siteOf(['b1'])))).rejects.toThrow(
      message,
    );
  });
});
