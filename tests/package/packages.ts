import { existsSync } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The project's folder. */
export const root = fileURLToPath(new URL('../..', import.meta.url));

/** The two packages that are published. */
export const published = [join(root, 'packages/beamkeep'), join(root, 'packages/cli')] as const;

/** What a manifest says, as far as it is looked at here. */
export interface Manifest {
  readonly name: string;
  readonly version: string;
  readonly license?: string;
  readonly exports?: Readonly<Record<string, unknown>>;
  readonly dependencies?: Readonly<Record<string, string>>;
  readonly devDependencies?: Readonly<Record<string, string>>;
  readonly optionalDependencies?: Readonly<Record<string, string>>;
}

/** The manifest of a package. */
export async function manifestOf(folder: string): Promise<Manifest> {
  return JSON.parse(await readFile(join(folder, 'package.json'), 'utf8'));
}

/** Folders of all packages that the published ones need, themselves left out, found as Node finds them. */
export async function neededFolders(): Promise<string[]> {
  const found = new Set<string>();
  const pending: string[] = [...published];
  for (let folder = pending.pop(); folder !== undefined; folder = pending.pop()) {
    const { dependencies = {}, optionalDependencies = {} } = await manifestOf(folder);
    for (const name of Object.keys({ ...dependencies, ...optionalDependencies })) {
      const needed = installedFor(folder, name);
      if (needed === undefined && !(name in optionalDependencies)) throw new Error(`${name} of ${folder} is missing`);
      if (needed === undefined || found.has(needed) || name === 'beamkeep') continue;
      found.add(needed);
      pending.push(needed);
    }
  }
  return [...found].sort();
}

/** Where a package finds another. */
function installedFor(folder: string, name: string): string | undefined {
  for (let above = folder; ; above = dirname(above)) {
    const candidate = join(above, 'node_modules', name);
    if (existsSync(join(candidate, 'package.json'))) return candidate;
    if (above === root || above === dirname(above)) return undefined;
  }
}
