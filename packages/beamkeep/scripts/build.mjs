// Builds the library into an empty dist, with the licences of what the bundles carry.
import { execFileSync } from 'node:child_process';
import { rm, writeFile } from 'node:fs/promises';
import { createRequire } from 'node:module';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { carriedPackages, notices } from './notices.mjs';

const here = fileURLToPath(new URL('..', import.meta.url));
const tsup = join(dirname(createRequire(import.meta.url).resolve('tsup/package.json')), 'dist/cli-default.js');
await rm(join(here, 'dist'), { recursive: true, force: true });
execFileSync(process.execPath, [tsup, '--silent'], { cwd: here, stdio: 'inherit' });
await writeFile(join(here, 'dist/THIRD-PARTY-LICENSES.txt'), await notices(await carriedPackages(here)));
