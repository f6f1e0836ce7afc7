// What a bundler takes in, minified and zipped [kB].
import { gzipSync } from 'node:zlib';
import { build } from 'esbuild';
import { root } from './measured.mjs';

/** Size of a program that imports so much of the root. */
export async function bundledSize(names) {
  const { outputFiles } = await build({
    stdin: { contents: `export ${names} from './packages/beamkeep/dist/index.js';`, resolveDir: root },
    bundle: true,
    minify: true,
    write: false,
    format: 'esm',
    platform: 'browser',
    logLevel: 'error',
  });
  return gzipSync(outputFiles[0].contents, { level: 9 }).length / 1000;
}
