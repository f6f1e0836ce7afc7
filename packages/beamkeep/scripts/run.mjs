// Runs a script written in TypeScript: node run.mjs SCRIPT.ts [ARGUMENTS]. Bundles it next to the installed packages.
import { mkdir } from 'node:fs/promises';
import { basename, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const [script, ...rest] = process.argv.slice(2);
if (!script) {
  console.error('run.mjs: name the script to run, such as make-demo.ts');
  process.exit(2);
}
const folder = fileURLToPath(new URL('../../../node_modules/.cache/beamkeep-scripts/', import.meta.url));
await mkdir(folder, { recursive: true });
const outfile = join(folder, `${basename(script, '.ts')}.${process.pid}.mjs`);
await build({
  entryPoints: [resolve(script)],
  outfile,
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  packages: 'external',
  sourcemap: 'inline',
});
process.argv = [process.argv[0], resolve(script), ...rest];
const { rm } = await import('node:fs/promises');
try {
  await import(pathToFileURL(outfile).href);
} finally {
  await rm(outfile, { force: true });
}
