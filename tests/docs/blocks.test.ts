import { execFile } from 'node:child_process';
import { mkdir, readFile, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { parseSite } from 'beamkeep';
import { afterAll, beforeAll, describe, expect, inject, it } from 'vitest';
import { type Bench, bench } from './bench.js';
import { renewed } from './excerpt.js';
import { type Block, blocksOf, pages, root } from './pages.js';

/*
 * Every block of code in every page is run, in the order of the page, and prints what the page says that it prints.
 * "npm run docs:renew" writes what is printed today into the pages.
 */

const run = promisify(execFile);
const { RENEW_DOCS } = process.env;
const renewing = RENEW_DOCS === '1';
const withBlocks = pages()
  .map((page) => ({ page, blocks: blocksOf(page) }))
  .filter(({ blocks }) => blocks.some(({ kind }) => ['sh', 'ts', 'html', 'json'].includes(kind)));

describe.each(withBlocks)('$page', ({ page, blocks }) => {
  let place: Bench;
  beforeAll(async () => {
    place = await bench(inject('chromium'));
  });
  afterAll(() => place.close());

  for (const block of blocks) {
    if (block.kind === 'json') {
      it(`line ${block.line}: json`, () => {
        const value: { format?: string } = JSON.parse(block.text);
        if (value.format === 'beamkeep-site/1') parseSite(block.text, `${page}:${block.line}`);
      });
    } else if (['sh', 'ts', 'html'].includes(block.kind)) {
      it(`line ${block.line}: ${block.kind}`, async () => {
        const printed = await place.printed(block);
        const { printed: shown } = block;
        if (shown === undefined) return;
        const now = renewed(shown.text, printed, renewing);
        if (renewing && now !== shown.text) await replace(page, shown.text, now);
        else expect(now, 'out of date: "npm run docs:renew" writes what is printed now').toBe(shown.text);
      });
    }
  }
});

async function replace(page: string, old: string, now: string): Promise<void> {
  const file = join(root, page);
  await writeFile(
    file,
    (await readFile(file, 'utf8')).replace(old, () => now),
  );
}

describe('TypeScript in the pages', () => {
  it('passes the strictest check against the built types', async () => {
    const folder = join(root, 'node_modules/.cache/beamkeep-docs');
    await rm(folder, { recursive: true, force: true });
    await mkdir(folder, { recursive: true });
    const programs = withBlocks.flatMap(({ blocks }) => blocks).filter(({ kind }) => kind === 'ts');
    expect(programs.length).toBeGreaterThan(0);
    await Promise.all(programs.map((block) => writeFile(join(folder, nameOf(block)), `${block.text}\nexport {};\n`)));
    const compilerOptions = {
      module: 'nodenext',
      target: 'es2023',
      types: ['node'],
      strict: true,
      exactOptionalPropertyTypes: true,
      noUncheckedIndexedAccess: true,
      noEmit: true,
      skipLibCheck: true,
    };
    await writeFile(join(folder, 'tsconfig.json'), JSON.stringify({ compilerOptions, include: ['.'] }));
    const told = await run(process.execPath, [join(root, 'node_modules/typescript/bin/tsc'), '-p', folder]).catch(
      ({ stdout }: { stdout: string }) => ({ stdout }),
    );
    expect(told.stdout).toBe('');
  });
});

const nameOf = ({ page, line }: Block): string => `${page.replace(/\W/g, '-')}-${line}.mts`;
