import { execFile } from 'node:child_process';
import { chmod, mkdir, mkdtemp, rm, symlink, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { transform } from 'esbuild';
import { chromium } from 'playwright-core';
import { serveFolder } from '../browser/serveFolder.js';
import { type Block, root } from './pages.js';

const run = promisify(execFile);

/** A folder in which the blocks of one page run one after the other, as a reader would run them. */
export interface Bench {
  /** What a block prints. */
  printed(block: Block): Promise<string>;
  close(): Promise<void>;
}

/** Commands of the project itself, which the blocks name but cannot run from within its tests. */
const ofTheProject = /^npm (?:ci|ci && npm (?:start|test)|install [a-z -]+|run [a-z:]+(?: -- \S+)?)$/;

/**
 * Lays out a folder with the built library, the data and the command `npx beamkeep` in it.
 *
 * @param browser path of a Chromium, for blocks of HTML
 */
export async function bench(browser: string): Promise<Bench> {
  const folder = await mkdtemp(join(tmpdir(), 'beamkeep-docs-'));
  const tools = join(folder, '.tools');
  await Promise.all([mkdir(tools), mkdir(join(folder, 'node_modules'))]);
  await Promise.all([
    symlink(join(root, 'datasets'), join(folder, 'datasets')),
    symlink(join(root, 'packages/beamkeep'), join(folder, 'node_modules/beamkeep')),
    writeFile(
      join(tools, 'npx'),
      `#!/bin/sh\nshift\nexec "${process.execPath}" "${join(root, 'packages/cli/bin/beamkeep.js')}" "$@"\n`,
    ),
  ]);
  await chmod(join(tools, 'npx'), 0o755);
  const { PATH = '' } = process.env;
  const env = { ...process.env, PATH: `${tools}:${PATH}`, LANG: 'C.UTF-8', TZ: 'America/New_York' };
  let programs = 0;

  /** Lines for a shell, those of the project left out. */
  async function inShell(text: string): Promise<string> {
    const lines = text.split('\n').filter((line) => !ofTheProject.test(line.replace(/\s+#.*$/, '')));
    const { stdout } = await run('sh', ['-c', lines.join('\n')], { cwd: folder, env, maxBuffer: 1 << 26 });
    return stdout;
  }

  async function inNode(text: string): Promise<string> {
    const { code } = await transform(text, { loader: 'ts', format: 'esm', target: 'node20' });
    const file = join(folder, `program-${++programs}.mjs`);
    await writeFile(file, code);
    const { stdout } = await run(process.execPath, [file], { cwd: folder, env, maxBuffer: 1 << 26 });
    return stdout;
  }

  /** What a page writes into its output, once it does. */
  async function inBrowser(text: string): Promise<string> {
    await writeFile(join(folder, 'index.html'), text);
    const served = await serveFolder(folder, '/');
    const window = await chromium.launch({ executablePath: browser });
    try {
      const page = await window.newPage();
      await page.goto(served.url);
      const output = page.locator('output:not(:empty)');
      await output.waitFor();
      return (await output.textContent()) ?? '';
    } finally {
      await window.close();
      await served.close();
    }
  }

  const ways: Readonly<Record<string, (text: string) => Promise<string>>> = {
    sh: inShell,
    ts: inNode,
    html: inBrowser,
  };
  return {
    async printed({ kind, text }) {
      const way = ways[kind];
      if (way === undefined) throw new Error(`a block of kind "${kind}" cannot be run`);
      return way(text);
    },
    close: () => rm(folder, { recursive: true, force: true }),
  };
}
