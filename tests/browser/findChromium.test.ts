import { chmod, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { findChromium } from './findChromium.js';

let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'find-chromium-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** A program that answers with the given exit code. */
async function program(name: string, exit: number): Promise<string> {
  const path = join(folder, name);
  await writeFile(path, `#!/bin/sh\nexit ${exit}\n`);
  await chmod(path, 0o755);
  return path;
}

describe('findChromium', () => {
  it('was found for this run', () => {
    expect(inject('chromium')).toMatch(/chrom/);
  });

  it('takes CHROMIUM_PATH at its word', async () => {
    const path = await program('my-own', 0);
    expect(await findChromium({ env: { CHROMIUM_PATH: path, PATH: '' }, platform: 'linux', arch: 'x64' })).toBe(path);
  });

  it('does not fall back when CHROMIUM_PATH does not start', async () => {
    const env = { CHROMIUM_PATH: join(folder, 'absent'), PATH: folder };
    await program('chromium', 0);
    await expect(findChromium({ env, platform: 'linux', arch: 'x64' })).rejects.toThrow(
      /CHROMIUM_PATH is ".*absent", which does not start\. Mend it, or unset it/,
    );
  });

  it('passes over a browser on PATH that does not start', async () => {
    await program('chromium-headless-shell', 1);
    const path = await program('chromium', 0);
    expect(await findChromium({ env: { PATH: folder }, platform: 'other', arch: 'x64' })).toBe(path);
  });

  it('names the command to install one', async () => {
    await expect(findChromium({ env: { PATH: '' }, platform: 'other', arch: 'x64' })).rejects.toThrow(
      /apt-get install chromium-headless-shell/,
    );
  });
});
