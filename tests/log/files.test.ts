import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { logFiles, siteFile } from 'beamkeep/node';
import { strToU8 } from 'fflate';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { inChunks, rowsOf, siteOf } from './rowsOf.js';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'beamkeep-'));
});
afterAll(() => rm(folder, { recursive: true }));

const log = 'time,b1\n2027-01-04T00:00:00Z,100\n';

describe('logFiles', () => {
  it('reads files, and standard input where a name is "-"', async () => {
    const path = join(folder, 'a.csv');
    await writeFile(path, log);
    const files = await logFiles([path, '-'], inChunks(strToU8('time,b1\n2027-01-04T00:01:00Z,99\n'), [4]));
    expect(files.map(({ name, size }) => [name, size])).toEqual([
      [path, log.length],
      ['standard input', undefined],
    ]);
    expect((await rowsOf(files, siteOf(['b1']))).columns).toEqual([[100, 99]]);
  });
  it('a large file comes in blocks that are used up in turn', async () => {
    const path = join(folder, 'large.csv');
    const start = Date.UTC(2027, 0, 4);
    const lines = Array.from({ length: 60_000 }, (_, row) => `${new Date(start + row * 1000).toISOString()},${row}\n`);
    await writeFile(path, `time,b1\n${lines.join('')}`);
    const { columns } = await rowsOf(await logFiles([path]), siteOf(['b1']));
    expect(columns[0]?.every((value, row) => value === row)).toBe(true);
    expect(columns[0]).toHaveLength(60_000);
  });
  it('says in words what is wrong with a name', async () => {
    await expect(logFiles([folder])).rejects.toThrow(`${folder}: this is a folder: name the log files in it`);
    await expect(logFiles([join(folder, 'none.csv')])).rejects.toThrow('none.csv: no such file');
    await expect(logFiles(['-', '-'], inChunks(new Uint8Array(0), [1]))).rejects.toThrow(
      'standard input ("-") can be read only once',
    );
    await expect(logFiles(['-'])).rejects.toThrow('there is no standard input to read "-" from');
    await expect(logFiles(['no\u001b[2J.csv'])).rejects.toThrow('no\\u{1b}[2J.csv: no such file');
  });
});

describe('siteFile', () => {
  it('reads a site, and names the file where it cannot', async () => {
    const path = join(folder, 'site.json');
    await writeFile(
      path,
      JSON.stringify({ format: 'beamkeep-site/1', beams: [{ id: 'B1', layout: 'reflective', separation: 5 }] }),
    );
    expect((await siteFile(path)).beams[0]?.id).toBe('B1');
    await expect(siteFile(join(folder, 'none.json'))).rejects.toThrow('none.json: no such file');
  });
});
