import { execFile } from 'node:child_process';
import { mkdir, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { manifestOf, neededFolders, published } from './packages.js';
import { localRegistry } from './registry.js';
import { tarballs } from './tarballs.js';

const run = promisify(execFile);

/**
 * Installs the packed library and command into an empty project, as a stranger would.
 *
 * @param folder an empty folder; the project is its `project`
 * @returns the project's folder
 */
export async function installPacked(folder: string): Promise<string> {
  const project = join(folder, 'project');
  const packs = join(folder, 'packs');
  await Promise.all([project, packs].map((each) => mkdir(each)));
  const folders = [...(await neededFolders()), ...published];
  const [packed, manifests] = await Promise.all([tarballs(folders, packs), Promise.all(folders.map(manifestOf))]);
  const registry = await localRegistry(
    packs,
    packed.map((tarball) => {
      const manifest = manifests.find(({ name, version }) => name === tarball.name && version === tarball.version);
      if (manifest === undefined) throw new Error(`packed, but not asked for: ${tarball.name} ${tarball.version}`);
      return { tarball, manifest };
    }),
  );
  try {
    await writeFile(join(project, 'package.json'), JSON.stringify({ name: 'empty', private: true }));
    const settings = ['--registry', registry.url, '--cache', join(folder, 'cache'), '--no-audit', '--no-fund'];
    await run('npm', ['install', ...settings, 'beamkeep', 'beamkeep-cli'], { cwd: project });
  } finally {
    await registry.close();
  }
  return project;
}
