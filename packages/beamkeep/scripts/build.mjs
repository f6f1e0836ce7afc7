// Builds the library into an empty dist: ES modules, types and the standalone file by tsup, CommonJS by commonJs.mjs,
// and the licences of what the bundles carry.
import { execFileSync } from 'node:child_process';
import { readdir, rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildCommonJs } from './commonJs.mjs';
import { carriedPackages, notices } from './notices.mjs';

const here = fileURLToPath(new URL('..', import.meta.url));
const tsup = join(dirname(createRequire(import.meta.url).resolve('tsup/package.json')), 'dist/cli-default.js');
const entries = (await readdir(join(here, 'src'), { recursive: true }))
  .filter((path) => /^(?:[^/]+|[^/]+\/index)\.ts$/.test(path) && !path.endsWith('.test.ts'))
  .map((path) => `src/${path}`)
  .sort();

await rm(join(here, 'dist'), { recursive: true, force: true });
execFileSync(process.execPath, [tsup, '--silent'], { cwd: here, stdio: 'inherit' });
await buildCommonJs(here, entries);
await writeFile(join(here, 'dist/THIRD-PARTY-LICENSES.txt'), await notices(await carriedPackages(here)));
