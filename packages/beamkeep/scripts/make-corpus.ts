// Writes a folder of labelled logs:
//   node packages/beamkeep/scripts/run.mjs packages/beamkeep/scripts/make-corpus.ts FOLDER --logs 100 --seed 1 --ranges weighing
//   --kinds single,healthy   only these kinds     --from K --to L   only these of the logs (to share the work)
//   --budget 60000           most samples of a log with one beam
import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { type RangeSet, rangeSets, type Scenario, scenarioAt, simulate } from '../src/simulation/index.js';
import { writeLog } from './writeLog.js';

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    logs: { type: 'string', default: '100' },
    seed: { type: 'string', default: '1' },
    ranges: { type: 'string', default: 'weighing' },
    kinds: { type: 'string' },
    budget: { type: 'string', default: '60000' },
    from: { type: 'string', default: '1' },
    to: { type: 'string' },
  },
});
const [folder] = positionals;
const { ranges } = values;
const isRangeSet = (name: string): name is RangeSet => Object.hasOwn(rangeSets, name);
const [logs, seed, budget, from] = [values.logs, values.seed, values.budget, values.from].map(Number);
const to = Number(values.to ?? values.logs);
if (
  folder === undefined ||
  !isRangeSet(ranges) ||
  [logs, seed, budget, from, to].some((value) => !Number.isInteger(value))
) {
  console.error(
    `make-corpus FOLDER [--logs N] [--seed N] [--ranges ${Object.keys(rangeSets).join('|')}] [--kinds A,B] [--budget N] [--from K] [--to L]`,
  );
  process.exit(2);
}
const kinds = values.kinds?.split(',').map((kind) => [kind as Scenario['kind'], 1] as const);
mkdirSync(folder, { recursive: true });
const options = { ranges, budget: budget as number, ...(kinds ? { kinds } : {}) };
const entries: Record<string, unknown>[] = [];
const begun = process.cpuUsage();
let beams = 0;
for (let k = from as number; k <= to; k++) {
  const id = `c${String(k).padStart(String(logs).length, '0').padStart(3, '0')}`;
  const names = { log: `${id}.csv.gz`, site: `${id}.site.json`, truth: `${id}.truth.json` };
  const drawn = scenarioAt(seed as number, k, options);
  const simulation = simulate(drawn.scenario, drawn.seed);
  writeLog(simulation, folder, names);
  beams += simulation.beams.length;
  entries.push({ id, kind: drawn.scenario.kind, ...names, rows: simulation.rows, beams: simulation.beams.length });
}
const whole = from === 1 && to === logs;
const index = { format: 'beamkeep-corpus/1', set: ranges, seed, invented: true, logs: entries };
writeFileSync(join(folder, whole ? 'index.json' : `index.${from}-${to}.json`), `${JSON.stringify(index, null, 1)}\n`);
const { user, system } = process.cpuUsage(begun);
console.log(
  `${entries.length} logs, ${beams} beams in ${folder}; ${((user + system) / 1e6 / beams).toFixed(2)} s of processor time a beam`,
);
