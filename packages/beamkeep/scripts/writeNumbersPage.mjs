// Writes docs/numbers.md and docs/numbers.json from the table of constants: node packages/beamkeep/scripts/writeNumbersPage.mjs
import { writeFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { runnerImport } from 'vite';

const here = (path) => fileURLToPath(new URL(path, import.meta.url));
const { module } = await runnerImport(here('numbersPage.ts'), { configFile: false, logLevel: 'error' });
await writeFile(here('../docs/numbers.md'), module.numbersPage());
await writeFile(here('../docs/numbers.json'), module.numbersJson());
