import { readdirSync, readFileSync } from 'node:fs';
import { dirname, join, relative } from 'node:path';
import ts from 'typescript';

/** One file of source, named from the folder that was read, and what it imports, as written. */
export interface SourceFile {
  readonly path: string;
  /** Files imported by a relative path, named from the same folder. */
  readonly files: readonly string[];
  /** Everything else: packages and Node modules. */
  readonly packages: readonly string[];
}

/** Reads every source file below a folder, tests left out. Imports of types count as well. */
export function sourceFiles(folder: string): SourceFile[] {
  return readdirSync(folder, { recursive: true, encoding: 'utf8' })
    .filter((path) => /\.tsx?$/.test(path) && !/\.test\.tsx?$/.test(path) && !path.includes('node_modules'))
    .sort()
    .map((path) => {
      const { importedFiles } = ts.preProcessFile(readFileSync(join(folder, path), 'utf8'));
      const names = importedFiles.map(({ fileName }) => fileName);
      return {
        path,
        files: names
          .filter((name) => name.startsWith('.'))
          .map((name) => relative(folder, join(folder, dirname(path), name)).replace(/\.jsx?$/, '.ts')),
        packages: names.filter((name) => !name.startsWith('.')),
      };
    });
}

/** Room of a file named from `src`; undefined for the files that lie in `src` itself. */
export const roomOf = (path: string): string | undefined => (path.includes('/') ? path.split('/')[0] : undefined);

/** Name of the package of an import: `@scope/name` or `name`. */
export const packageOf = (name: string): string =>
  name
    .split('/')
    .slice(0, name.startsWith('@') ? 2 : 1)
    .join('/');

/** A ring of files, each importing the next; undefined where there is none. */
export function ring(files: readonly SourceFile[]): string[] | undefined {
  const byPath = new Map(files.map((file) => [file.path, file]));
  const done = new Set<string>();
  const visit = (path: string, trail: readonly string[]): string[] | undefined => {
    if (trail.includes(path)) return [...trail.slice(trail.indexOf(path)), path];
    if (done.has(path)) return undefined;
    for (const next of byPath.get(path)?.files ?? []) {
      const found = visit(next, [...trail, path]);
      if (found) return found;
    }
    done.add(path);
    return undefined;
  };
  for (const { path } of files) {
    const found = visit(path, []);
    if (found) return found;
  }
  return undefined;
}
