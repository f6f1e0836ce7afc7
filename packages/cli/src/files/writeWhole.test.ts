import { mkdtemp, readdir, readFile, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { UsageError } from 'beamkeep/columns';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { exists, writeWhole } from './writeWhole.js';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'beamkeep-'));
});
afterAll(() => rm(folder, { recursive: true }));

describe('writeWhole', () => {
  it('writes, and leaves nothing else behind', async () => {
    await writeWhole(join(folder, 'a.txt'), 'one');
    await writeWhole(join(folder, 'a.txt'), 'two');
    expect(await readFile(join(folder, 'a.txt'), 'utf8')).toBe('two');
    expect(await readdir(folder)).toEqual(['a.txt']);
  });
  it('says what refused, names the file and leaves no draft', async () => {
    await writeFile(join(folder, 'not-a-folder'), '');
    const path = join(folder, 'not-a-folder', 'b.txt');
    await expect(writeWhole(path, 'x')).rejects.toThrow(UsageError);
    await expect(writeWhole(path, 'x')).rejects.toThrow('b.txt: cannot be written');
    expect((await readdir(folder)).sort()).toEqual(['a.txt', 'not-a-folder']);
  });
});

describe('exists', () => {
  it('tells', async () => {
    expect(await exists(join(folder, 'a.txt'))).toBe(true);
    expect(await exists(join(folder, 'c.txt'))).toBe(false);
  });
});
