import { readFile, writeFile } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import { UsageError } from '../../packages/beamkeep/src/columns/index.js';
import { causeWords } from '../../packages/beamkeep/src/diagnosis/finding.js';
import { type ComparedBeam, compare } from './compare.js';
import { type LabelledLog, readCorpus } from './corpus.js';
import type { Answer, Task } from './diagnoseLog.js';
import type { StatedDiagnosis } from './diagnosisJson.js';
import { floors, standing } from './floors.js';
import type { Interval } from './intervals.js';
import { score } from './score.js';
import { mistakes, scoreTable } from './table.js';

const help = `Diagnoses every labelled log of a folder and prints how well that went.

  npm run evaluate -- DIR [options]

  --only ID        one log (may be given several times)
  --misses         list every mistake below the table
  --json           the figures as JSON
  --jobs N         logs at a time (default: the number of processors)
  --findings DIR2  take ready diagnoses DIR2/ID.json instead of making them
  --keep DIR3      write each diagnosis to DIR3/ID.json
  --gate           exit code 1 where a figure is below what it must reach
`;

const { values: options, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    only: { type: 'string', multiple: true, default: [] },
    misses: { type: 'boolean', default: false },
    json: { type: 'boolean', default: false },
    jobs: { type: 'string' },
    findings: { type: 'string' },
    keep: { type: 'string' },
    gate: { type: 'boolean', default: false },
    help: { type: 'boolean', default: false },
  },
});

/** What is said of a log, and when its beams called for fire. */
interface Outcome {
  readonly diagnosis: StatedDiagnosis;
  readonly fires: ReadonlyMap<string, readonly Interval[]>;
}

/** Of a log that could not be read: everything in it counts as missed. */
const nothingSaid: Outcome = { diagnosis: { beams: [] }, fires: new Map() };

/** Hands out one log at a time to each of several workers. */
async function outcomes(logs: readonly LabelledLog[], jobs: number): Promise<Map<string, Outcome>> {
  const found = new Map<string, Outcome>();
  const queue = [...logs];
  const work = async (): Promise<void> => {
    const worker = new Worker(new URL('diagnoseLog.mjs', import.meta.url));
    try {
      for (let log = queue.shift(); log; log = queue.shift()) {
        const started = performance.now();
        found.set(log.id, await outcome(log, worker));
        process.stderr.write(`${log.id} ${((performance.now() - started) / 1000).toFixed(1)} s\n`);
      }
    } finally {
      await worker.terminate();
    }
  };
  await Promise.all(Array.from({ length: Math.min(jobs, logs.length) }, work));
  return found;
}

async function outcome({ id, log, site }: LabelledLog, worker: Worker): Promise<Outcome> {
  const { findings } = options;
  const task: Task = { log, site, diagnoses: findings === undefined };
  const answer = await new Promise<Answer>((resolve, reject) => {
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.postMessage(task);
  });
  worker.removeAllListeners('error');
  if ('failure' in answer) {
    process.stderr.write(`${id} could not be diagnosed: ${answer.failure}\n`);
    process.exitCode = 1;
    return nothingSaid;
  }
  const { fires, diagnosis = JSON.parse(await readFile(join(findings ?? '', `${id}.json`), 'utf8')) } = answer;
  return { diagnosis, fires };
}

async function main(): Promise<void> {
  const [folder] = positionals;
  if (options.help) {
    process.stdout.write(help);
    return;
  }
  if (folder === undefined || positionals.length > 1) throw new UsageError('name one folder of labelled logs');
  const jobs = options.jobs === undefined ? availableParallelism() : Number(options.jobs);
  if (!Number.isInteger(jobs) || jobs < 1) throw new UsageError(`--jobs ${options.jobs}: give a number from 1`);
  const logs = await readCorpus(folder, options.only);
  const found = await outcomes(logs, jobs);
  const beams: ComparedBeam[] = [];
  for (const { id, truth } of logs) {
    const { diagnosis, fires } = found.get(id) ?? nothingSaid;
    if (options.keep !== undefined)
      await writeFile(join(options.keep, `${id}.json`), `${JSON.stringify(diagnosis, null, 1)}\n`);
    beams.push(...compare(id, truth, diagnosis, fires, causeWords));
  }
  const labelled = logs.flatMap(({ truth }) => truth.beams.flatMap(({ causes }) => causes)).length;
  const figures = score(beams, causeWords, labelled);
  process.stdout.write(options.json ? `${JSON.stringify(figures, null, 1)}\n` : `${scoreTable(figures)}\n`);
  if (options.misses) process.stdout.write(`\n${mistakes(beams)}\n`);
  if (options.gate && floors.some((floor) => standing(floor, figures) === 'below')) process.exitCode = 1;
}

try {
  await main();
} catch (error) {
  if (!(error instanceof UsageError)) throw error;
  process.stderr.write(`evaluate: ${error.message}\n`);
  process.exitCode = 2;
}
