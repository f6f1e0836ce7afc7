// Writes datasets/tram-depot/commissioning, the invented commissioning day of the tram depot:
//   node packages/beamkeep/scripts/run.mjs packages/beamkeep/scripts/make-commissioning-demo.ts
import { mkdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseSite } from '../src/site/index.js';
import { commissioningFiles } from './commissioningDay.js';

const folder = process.argv[2] ?? 'datasets/tram-depot/commissioning';
mkdirSync(folder, { recursive: true });
const site = parseSite(readFileSync('datasets/tram-depot/site.json', 'utf8'), 'site.json');
for (const [name, text] of commissioningFiles(site)) writeFileSync(join(folder, name), text);
