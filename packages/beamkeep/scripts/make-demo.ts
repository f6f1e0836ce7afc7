// Writes datasets/tram-depot from its scenario and its seed. Run: node packages/beamkeep/scripts/run.mjs packages/beamkeep/scripts/make-demo.ts
import { mkdirSync } from 'node:fs';
import { simulate } from '../src/simulation/index.js';
import { tramDepot, tramDepotSeed } from './tramDepot.js';
import { writeLog } from './writeLog.js';

const folder = process.argv[2] ?? 'datasets/tram-depot';
mkdirSync(folder, { recursive: true });
writeLog(simulate(tramDepot, tramDepotSeed), folder, { log: 'log.csv.gz', site: 'site.json', truth: 'truth.json' });
