import { execFile } from 'node:child_process';
import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { promisify } from 'node:util';
import { describe, expect, it } from 'vitest';
import { rooms } from '../architecture/rooms.js';
import { manifestOf, neededFolders, published, root } from './packages.js';
import { tarballs } from './tarballs.js';

const run = promisify(execFile);
const [library, command] = published;

describe('what is packed', () => {
  it('of the library: code with its maps, types of both forms, guides and licences, nothing else', async () => {
    const [packed] = await tarballs([library]);
    const paths = packed?.files.map(({ path }) => path) ?? [];
    const kinds = [
      /^(package\.json|README\.md|CHANGELOG\.md|LICENSE)$/,
      /^docs\/[a-z-]+(?:\.schema)?\.(?:md|json|svg)$/,
      /^dist\/(?:[a-z]+\/)?[\w-]+\.(?:js|cjs)(?:\.map)?$/,
      /^dist\/(?:[a-z]+\/)?[\w-]+\.d\.c?ts$/,
      /^dist\/THIRD-PARTY-LICENSES\.txt$/,
    ];
    expect(paths.filter((path) => !kinds.some((kind) => kind.test(path)))).toEqual([]);
    for (const name of ['README.md', 'CHANGELOG.md', 'LICENSE', 'dist/index.js', 'dist/index.cjs', 'dist/index.d.ts']) {
      expect(paths).toContain(name);
    }
    expect(packed?.files.reduce((sum, { size }) => sum + size, 0)).toBeLessThan(12e6);
  });

  it('of the command: its launcher and what that runs', async () => {
    const [packed] = await tarballs([command]);
    const paths = packed?.files.map(({ path }) => path) ?? [];
    // Each command is a file of its own, and what some of them share is another.
    const parts = paths.filter((path) => /^dist\/[\w-]+\.js$/.test(path));
    expect(parts).toContain('dist/run.js');
    expect(paths.filter((path) => !parts.includes(path)).sort()).toEqual([
      'LICENSE',
      'README.md',
      'bin/beamkeep.js',
      'package.json',
    ]);
  });

  it.each(published)('%s carries the licence of the project', async (folder) => {
    const texts = await Promise.all([folder, root].map((each) => readFile(join(each, 'LICENSE'), 'utf8')));
    expect(texts[0]).toBe(texts[1]);
  });

  it('both of one version, the command asking for exactly that library', async () => {
    const [one, other] = await Promise.all([manifestOf(library), manifestOf(command)]);
    expect(other.version).toBe(one.version);
    expect(other.dependencies).toMatchObject({ beamkeep: one.version });
    expect(await readFile(join(library, 'CHANGELOG.md'), 'utf8')).toContain(`## ${one.version}`);
  });
});

describe('source maps', () => {
  it('lead to the sources, which they carry, and name no machine', async () => {
    const built = join(library, 'dist');
    const maps = (await readdir(built, { recursive: true })).filter((name) => name.endsWith('.map'));
    expect(maps.some((name) => name.endsWith('.cjs.map'))).toBe(true);
    for (const name of maps) {
      const map: { sources: string[]; sourcesContent?: string[] } = JSON.parse(
        await readFile(join(built, name), 'utf8'),
      );
      const foreign = map.sources.filter((source) => !/^(?:\.\.\/)+(?:src|node_modules)\//.test(source));
      expect(foreign, name).toEqual([]);
      expect(map.sourcesContent ?? [], name).toHaveLength(map.sources.length);
    }
  });
});

describe('the entries', () => {
  it('are the root, the files of Node, the standalone file, and every room', async () => {
    const { exports = {} } = await manifestOf(library);
    const expected = ['.', './node', './standalone', './package.json', ...rooms.map(({ name }) => `./${name}`)];
    expect(Object.keys(exports).sort()).toEqual(expected.sort());
  });

  it('each give code and types to import and require', async () => {
    const { exports = {} } = await manifestOf(library);
    for (const [entry, target] of Object.entries(exports)) {
      if (['./package.json', './standalone'].includes(entry)) continue;
      const name = entry.slice(2);
      const ownFile = ['commissioning', 'moments', 'planning'].includes(name) ? `${name}Entry` : `${name}/index`;
      const path = name === '' ? 'index' : name === 'node' ? 'node' : ownFile;
      expect(target).toEqual({
        import: { types: `./dist/${path}.d.ts`, default: `./dist/${path}.js` },
        require: { types: `./dist/${path}.d.cts`, default: `./dist/${path}.cjs` },
      });
    }
  });
});

describe('what the library needs', () => {
  it('is listed in its manifest, and nothing is listed that no file imports', async () => {
    const source = join(library, 'src');
    const files = (await readdir(source, { recursive: true })).filter((name) => /(?<!\.test|\.d)\.ts$/.test(name));
    const texts = await Promise.all(files.map((name) => readFile(join(source, name), 'utf8')));
    const imported = texts.flatMap((text) =>
      [...text.matchAll(/^(?:import|export|\}) .*from '((?:@[^/']+\/)?[^./'][^/']*)(?:\/[^']*)?';$/gm)].map(
        ([, name]) => name ?? '',
      ),
    );
    const packages = new Set(imported.filter((name) => !name.startsWith('node:')));
    expect(Object.keys((await manifestOf(library)).dependencies ?? {}).sort()).toEqual([...packages].sort());
  });

  it.each([
    ['packages/beamkeep', 'dependencies'],
    ['packages/cli', 'dependencies'],
    ['notebook', 'devDependencies'],
  ] as const)(
    '%s tells of each package what it is for, why this one, its size and when it was released',
    async (folder, kind) => {
      const { [kind]: needed = {} } = await manifestOf(join(root, folder));
      const page = await readFile(join(root, folder, 'README.md'), 'utf8');
      const words = '[^|]*\\w+[^|]*';
      const told = [
        ...page.matchAll(
          new RegExp(`^\\| (\\S+) (\\S+) \\|${words}\\|${words}\\|[^|]*\\d kB[^|]*\\| 20\\d\\d-\\d\\d \\|$`, 'gm'),
        ),
      ];
      const others = Object.entries(needed).filter(([name]) => name !== 'beamkeep');
      expect(told.map(([, name, version]) => `${name} ${version}`).sort()).toEqual(
        others.map(([name, version]) => `${name} ${version}`).sort(),
      );
    },
  );

  it('allows everyone to use it: licences without conditions on the whole', async () => {
    const folders = await neededFolders();
    const licences = await Promise.all(
      folders.map(async (folder) => {
        const { name, license } = await manifestOf(folder);
        return [name, license ?? (await writtenLicence(folder))] as const;
      }),
    );
    const free = /^(MIT|ISC|BSD-2-Clause|BSD-3-Clause|Apache-2\.0|0BSD)$/;
    expect(licences.filter(([, licence]) => !free.test(licence))).toEqual([]);
  });
});

/** The licence of a package whose manifest is silent, by the words of its text. */
async function writtenLicence(folder: string): Promise<string> {
  const file = (await readdir(folder)).find((name) => /^licen[cs]e/i.test(name));
  const text = file === undefined ? '' : await readFile(join(folder, file), 'utf8');
  const twoClauses = /Redistributions of source code/.test(text) && !/Neither the name/.test(text);
  return twoClauses ? 'BSD-2-Clause' : 'not stated';
}

describe('the usual checkers of packages', () => {
  it.each(published)('publint has nothing to say of %s', async (folder) => {
    const { publint } = await import('publint');
    const { messages } = await publint({ pkgDir: folder, level: 'suggestion', strict: true });
    expect(messages).toEqual([]);
  });

  it('the types are right in every way of resolving that knows entries', async () => {
    const folder = await mkdtemp(join(tmpdir(), 'beamkeep-types-'));
    try {
      const [packed] = await tarballs([library], folder);
      const checker = createRequire(import.meta.url).resolve('@arethetypeswrong/cli/package.json');
      // The standalone file is for pages: it has no form to be required.
      const settings = [
        '--profile',
        'node16',
        '--exclude-entrypoints',
        'standalone',
        '--format',
        'ascii',
        '--no-emoji',
      ];
      const program = join(dirname(checker), 'dist/index.js');
      await run(process.execPath, [program, join(folder, packed?.filename ?? ''), ...settings]);
    } finally {
      await rm(folder, { recursive: true, force: true });
    }
  });
});

describe('what a bundler takes', () => {
  it('keeps to the budgets of .size-limit.json', async () => {
    const program = join(root, 'node_modules/size-limit/bin.js');
    const { stdout } = await run(process.execPath, [program, '--json'], { cwd: root }).catch(
      (failed: { stdout: string }) => failed,
    );
    const sizes: { name: string; passed: boolean; size: number }[] = JSON.parse(stdout);
    expect(sizes.length).toBeGreaterThan(0);
    expect(sizes.filter(({ passed }) => !passed)).toEqual([]);
  });

  it('is measured for every entry at once, too', async () => {
    const { exports = {} } = await manifestOf(library);
    const measured = await readFile(join(root, 'tests/package/everything.mjs'), 'utf8');
    const entries = Object.keys(exports).filter((name) => !/node|standalone|package/.test(name));
    expect(
      [...measured.matchAll(/^export \* as (\w+)/gm)].map(([, name]) => (name === 'root' ? '.' : `./${name}`)).sort(),
    ).toEqual(entries.sort());
  });

  it('is what the library says of itself', async () => {
    const budgets: { name: string; limit: string }[] = JSON.parse(
      await readFile(join(root, '.size-limit.json'), 'utf8'),
    );
    const page = await readFile(join(library, 'README.md'), 'utf8');
    const [said = ''] = /^Minified and gzipped[\s\S]*?\. A test/m.exec(page) ?? [];
    const limits = budgets.filter(({ name }) => name !== 'the standalone file').map(({ limit }) => limit);
    expect([...said.matchAll(/[\d.]+ kB/g)].map(([limit]) => limit)).toEqual(limits);
  });
});
