import { execFile } from 'node:child_process';
import { cp, mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { diagnose, logOfText, parseSite } from 'beamkeep';
import { type Browser, chromium } from 'playwright-core';
import { build } from 'vite';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { serveFolder } from '../browser/serveFolder.js';
import { smallLog, smallSite } from '../browser/smallLog.js';
import { installPacked } from './install.js';
import { manifestOf, published, root } from './packages.js';
import {
  bundledProgram,
  bundledWorker,
  everyRoom,
  moduleProgram,
  page,
  pageProgram,
  quietProgram,
  requireProgram,
  typedProgram,
  workerProgram,
} from './programs.js';

/*
 * The tarballs as they would be published, installed by npm into an empty project, and used there in every way that the
 * library promises: ES module, require, TypeScript, through a bundler, in a plain page, in a worker, as a command.
 */

const run = promisify(execFile);
let folder: string;
let project: string;
let entries: string[];
let expected: string;

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'beamkeep-package-'));
  project = await installPacked(folder);
  const { exports = {} } = await manifestOf(published[0]);
  entries = Object.keys(exports)
    .filter((key) => !['./package.json', './standalone'].includes(key))
    .map((key) => key.replace('.', 'beamkeep'));
  await write({ 'log.csv': smallLog(), 'site.json': smallSite() });
  expected = JSON.stringify((await diagnose(logOfText(smallLog(), 'log.csv'), parseSite(smallSite()))).diagnosis);
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** Writes files into the project, or into a folder of it. */
async function write(files: Readonly<Record<string, string>>, into = project): Promise<void> {
  await mkdir(into, { recursive: true });
  await Promise.all(Object.entries(files).map(([name, text]) => writeFile(join(into, name), text)));
}

/** What a program of the project prints. */
async function printed(args: readonly string[], env: Readonly<Record<string, string>> = {}): Promise<string> {
  const { stdout } = await run(process.execPath, args, { cwd: project, env: { ...process.env, ...env } });
  return stdout;
}

describe('the packed library in Node', () => {
  it('works as an ES module, every entry', async () => {
    await write({ 'main.mjs': moduleProgram(entries) });
    expect(await printed(['main.mjs'])).toBe(expected);
  });

  it.each([
    ['America/St_Johns', 'de_DE.UTF-8'],
    ['Asia/Kathmandu', 'ar_EG.UTF-8'],
    ['Pacific/Chatham', 'tr_TR.UTF-8'],
  ])('gives the same on a machine in %s with locale %s', async (zone, locale) => {
    await write({ 'zone.mjs': moduleProgram([]) });
    expect(await printed(['zone.mjs'], { TZ: zone, LANG: locale, LC_ALL: locale })).toBe(expected);
  });

  it('works by require, every entry, in a Node that cannot require ES modules', async () => {
    await write({ 'main.cjs': requireProgram(entries) });
    const off = '--no-experimental-require-module';
    const known = process.allowedNodeEnvironmentFlags.has('--experimental-require-module');
    expect(await printed([...(known ? [off] : []), 'main.cjs'])).toBe(expected);
  });

  it('changes nothing in the world by being loaded', async () => {
    await write({ 'quiet.mjs': quietProgram(entries) });
    expect(JSON.parse(await printed(['quiet.mjs']))).toEqual([]);
  });

  it('answers as a command', async () => {
    const { stdout } = await run(
      join(project, 'node_modules/.bin/beamkeep'),
      ['diagnose', 'log.csv', '--site', 'site.json', '--json'],
      { cwd: project },
    );
    expect(JSON.parse(stdout)).toEqual(JSON.parse(expected));
  });
});

describe('the packed types', () => {
  it.each([
    ['nodenext', 'mts'],
    ['nodenext', 'cts'],
    ['bundler', 'ts'],
  ])('pass the strictest check, resolved as %s, from a file .%s', async (resolution, ending) => {
    const into = join(project, `typed-${ending}`);
    const compilerOptions = {
      module: resolution === 'bundler' ? 'esnext' : 'nodenext',
      moduleResolution: resolution,
      target: 'es2022',
      lib: ['es2023', 'dom'],
      types: [],
      strict: true,
      exactOptionalPropertyTypes: true,
      noUncheckedIndexedAccess: true,
      skipLibCheck: false,
      noEmit: true,
    };
    await write(
      { [`main.${ending}`]: typedProgram, 'tsconfig.json': JSON.stringify({ compilerOptions, include: ['.'] }) },
      into,
    );
    const told = await printed([join(root, 'node_modules/typescript/bin/tsc'), '-p', into]).catch(
      ({ stdout }: { stdout: string }) => stdout,
    );
    expect(told).toBe('');
  });
});

describe('the packed library in a browser', () => {
  let browser: Browser;
  beforeAll(async () => {
    browser = await chromium.launch({ executablePath: inject('chromium') });
  });
  afterAll(() => browser.close());

  /** What page and worker of a folder make of the log. */
  async function shown(site: string): Promise<readonly [string, string]> {
    const served = await serveFolder(site, '/');
    const tab = await (await browser.newContext()).newPage();
    const errors: string[] = [];
    tab.on('pageerror', (error) => errors.push(String(error)));
    try {
      await tab.goto(served.url);
      const results = await tab.waitForFunction(() => {
        const { inPage, inWorker } = globalThis as { inPage?: string; inWorker?: string };
        return inPage && inWorker && ([inPage, inWorker] as const);
      });
      return (await results.jsonValue()) as readonly [string, string];
    } catch (error) {
      throw new Error(`${errors.join('; ')} ${error}`);
    } finally {
      await tab.close();
      await served.close();
    }
  }

  it('works as a plain script module and in a worker of one', async () => {
    await write({ 'index.html': page, 'main.js': pageProgram, 'worker.js': workerProgram });
    expect(await shown(project)).toEqual([expected, expected]);
  });

  it('works through a bundler, every entry but that for files', async () => {
    const source = join(project, 'bundled');
    const rooms = entries.filter((entry) => entry !== 'beamkeep/node');
    await write(
      { 'index.html': page, 'main.js': bundledProgram, 'worker.js': bundledWorker, 'everyRoom.js': everyRoom(rooms) },
      source,
    );
    await build({
      root: source,
      configFile: false,
      logLevel: 'error',
      worker: { format: 'es' },
      build: { target: 'es2022' },
    });
    const built = join(source, 'dist');
    await Promise.all(['log.csv', 'site.json'].map((name) => cp(join(project, name), join(built, name))));
    expect(await shown(built)).toEqual([expected, expected]);
  });
});
