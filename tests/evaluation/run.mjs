/*
 * Bundles the evaluation together with the library's source (so that no build is needed and none can be stale) and runs
 * it. Installed packages stay outside the bundle. Each run has a folder of its own, so that two can go on at a time.
 */
import { rmSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { build } from 'esbuild';

const at = (path) => fileURLToPath(new URL(path, import.meta.url));
const outdir = at(`../../node_modules/.cache/beamkeep-evaluation/${process.pid}/`);
process.on('exit', () => rmSync(outdir, { recursive: true, force: true }));

await build({
  entryPoints: [at('main.ts'), at('diagnoseLog.ts')],
  outdir,
  outExtension: { '.js': '.mjs' },
  bundle: true,
  platform: 'node',
  format: 'esm',
  target: 'node20',
  packages: 'external',
  sourcemap: true,
  logLevel: 'warning',
});
await import(`${outdir}main.mjs`);
