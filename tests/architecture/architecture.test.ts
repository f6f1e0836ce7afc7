import { existsSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, it } from 'vitest';
import { redrawn } from './drawing.js';
import { packageOf, ring, roomOf, type SourceFile, sourceFiles } from './imports.js';
import { nodeFiles, notForQuestions, numericPackages, numericRoom, questionRow, rooms } from './rooms.js';

const at = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const files = sourceFiles(at('packages/beamkeep/src'));
const row = (path: string): number => {
  const name = roomOf(path);
  return name === undefined ? questionRow : (rooms.find((room) => room.name === name)?.row ?? Number.NaN);
};

/** Imports that break a rule, as "importer -> imported". */
const offenders = (breaks: (file: SourceFile, imported: string) => boolean): string[] =>
  files.flatMap((file) =>
    file.files.filter((imported) => breaks(file, imported)).map((imported) => `${file.path} -> ${imported}`),
  );
const between = ({ path }: SourceFile, imported: string): boolean => roomOf(path) !== roomOf(imported);

describe('imports of the library', () => {
  it('come from known rooms: a new folder needs a line in rooms.ts', () =>
    expect(files.filter(({ path }) => Number.isNaN(row(path))).map(({ path }) => path)).toEqual([]));
  it('go down: never up, never sideways to another room', () =>
    expect(
      offenders(
        (file, imported) => between(file, imported) && row(file.path) <= row(imported) && row(file.path) < questionRow,
      ),
    ).toEqual([]));
  it('cross from room to room by the door, index.ts', () =>
    expect(
      offenders(
        (file, imported) =>
          between(file, imported) && roomOf(imported) !== undefined && !/^[^/]+\/index\.ts$/.test(imported),
      ),
    ).toEqual([]));
  it('form no ring of files', () => expect(ring(files)).toBeUndefined());
  it('bring no simulation into a question', () =>
    expect(
      offenders(({ path }, imported) => roomOf(path) === undefined && roomOf(imported) === notForQuestions),
    ).toEqual([]));
  it('bring packages that calculate into one room only', () => {
    const found = files.filter(
      ({ path, packages }) =>
        roomOf(path) !== numericRoom && packages.some((name) => numericPackages.test(packageOf(name))),
    );
    expect(found.map(({ path }) => path)).toEqual([]);
  });
  it('bring Node modules into the files of the Node entry only', () => {
    const found = files.filter(
      ({ path, packages }) => !nodeFiles.includes(path) && packages.some((name) => name.startsWith('node:')),
    );
    expect(found.map(({ path }) => path)).toEqual([]);
  });
  it('bring only packages that the library declares', () => {
    const { dependencies } = JSON.parse(readFileSync(at('packages/beamkeep/package.json'), 'utf8'));
    const used = new Set(
      files.flatMap(({ packages }) => packages.filter((name) => !name.startsWith('node:')).map(packageOf)),
    );
    expect([...used].filter((name) => !(name in dependencies))).toEqual([]);
  });
});

describe('the command and the notebook', () => {
  for (const folder of ['packages/cli/src', 'notebook/src'])
    it(`${folder} imports the library by its name, not by its files`, () => {
      const own = existsSync(at(folder)) ? sourceFiles(at(folder)) : [];
      expect(
        own.filter((file) => file.files.some((path) => path.includes('beamkeep/src'))).map(({ path }) => path),
      ).toEqual([]);
    });
});

describe('the reading of imports', () => {
  const file = (path: string, ...imported: string[]): SourceFile => ({ path, files: imported, packages: [] });
  it('finds a ring', () =>
    expect(ring([file('a.ts', 'b.ts'), file('b.ts', 'c.ts'), file('c.ts', 'b.ts')])).toEqual(['b.ts', 'c.ts', 'b.ts']));
  it('finds none where two ways lead to one file', () =>
    expect(
      ring([file('a.ts', 'b.ts', 'c.ts'), file('b.ts', 'd.ts'), file('c.ts', 'd.ts'), file('d.ts')]),
    ).toBeUndefined());
  it('knows every file of the library', () => expect(files.length).toBeGreaterThan(50));
  it('tells a package from its parts', () => {
    expect(packageOf('pure-rand/generator/xoroshiro128plus')).toBe('pure-rand');
    expect(packageOf('@humanwhocodes/momoa')).toBe('@humanwhocodes/momoa');
  });
});

describe('DEVELOPERS.md', () => {
  it('draws the rooms as the imports are: "npm run draw" draws them anew', () => {
    const page = readFileSync(at('DEVELOPERS.md'), 'utf8');
    expect(redrawn(page, files)).toBe(page);
  });
});
