/*
 * The standalone file and the CommonJS build carry code of other packages, whose licences ask that their text goes
 * along. Which ones they are is asked of the bundler, not listed by hand.
 */
import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { build } from 'esbuild';

/** Folders of the packages that a bundle of the library holds, by name. */
export async function carriedPackages(library) {
  const { metafile } = await build({
    absWorkingDir: library,
    entryPoints: ['src/index.ts'],
    bundle: true,
    write: false,
    metafile: true,
    format: 'esm',
    outdir: 'dist',
    logLevel: 'error',
  });
  const folders = Object.values(metafile.outputs)
    .flatMap(({ inputs }) => Object.entries(inputs))
    .filter(([, { bytesInOutput }]) => bytesInOutput > 0)
    .map(([path]) => /^.*node_modules\/(?:@[^/]+\/)?[^/]+/.exec(path)?.[0])
    .filter((folder) => folder !== undefined);
  return [...new Set(folders)].sort().map((folder) => join(library, folder));
}

/** Name, version and licence text of each package. */
export async function notices(folders) {
  const parts = await Promise.all(
    folders.map(async (folder) => {
      const { name, version, license } = JSON.parse(await readFile(join(folder, 'package.json'), 'utf8'));
      const file = (await readdir(folder)).find((each) => /^licen[cs]e(\.(md|txt))?$/i.test(each));
      const text = file && (await readFile(join(folder, file), 'utf8')).trim();
      if (!text && !license) throw new Error(`${name} states no licence`);
      return `${name} ${version}\n\n${text || `Licence: ${license}, as its manifest says; the package holds no text.`}\n`;
    }),
  );
  const head =
    'The files standalone.js and *.cjs hold code of these packages, or of some of them, under these licences.\n';
  return [head, ...parts].join(`\n${'-'.repeat(80)}\n\n`);
}
