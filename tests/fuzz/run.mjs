// Bundles the long run next to the command's own packages (the root may hold another version of them), and runs it.
import { mkdir, rm } from 'node:fs/promises';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { build } from 'esbuild';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const folder = here('../../packages/cli/node_modules/.cache/');
await mkdir(folder, { recursive: true });
const outfile = `${folder}fuzz.${process.pid}.mjs`;
await build({
  entryPoints: [here('main.ts')],
  outfile,
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  packages: 'external',
  sourcemap: 'inline',
});
try {
  await import(pathToFileURL(outfile).href);
} finally {
  await rm(outfile, { force: true });
}
