import { readFile, writeFile } from 'node:fs/promises';
import { availableParallelism } from 'node:os';
import { join } from 'node:path';
import { parseArgs } from 'node:util';
import { Worker } from 'node:worker_threads';
import { UsageError } from '../../packages/beamkeep/src/columns/index.js';
import { causeWords } from '../../packages/beamkeep/src/diagnosis/finding.js';
import { type ComparedBeam, compare } from './compare.js';
import { alarmThresholds, type LabelledLog, readCorpus } from './corpus.js';
import type { Task } from './diagnoseLog.js';
import type { StatedDiagnosis } from './diagnosisJson.js';
import { floors, standing } from './floors.js';
import { score } from './score.js';
import { mistakes, scoreTable } from './table.js';

const help = `Diagnoses every labelled log of a folder and prints how well that went.

  npm run evaluate -- DIR [options]

  --only ID        one log (may be given several times)
  --misses         list every mistake below the table
  --json           the figures as JSON
  --jobs N         logs at a time (default: the number of processors)
  --findings DIR2  take ready diagnoses DIR2/ID.json instead of running the library
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

type Answer = { readonly diagnosis: StatedDiagnosis } | { readonly failure: string };

/** Hands out one log at a time to each of several workers. */
async function diagnoseAll(logs: readonly LabelledLog[], jobs: number): Promise<Map<string, StatedDiagnosis>> {
  const diagnoses = new Map<string, StatedDiagnosis>();
  const queue = [...logs];
  const work = async (): Promise<void> => {
    const worker = new Worker(new URL('diagnoseLog.mjs', import.meta.url));
    try {
      for (let log = queue.shift(); log; log = queue.shift()) {
        const { id } = log;
        const task: Task = { log: log.log, site: log.site };
        const started = performance.now();
        const answer = await new Promise<Answer>((resolve, reject) => {
          worker.once('message', resolve);
          worker.once('error', reject);
          worker.postMessage(task);
        });
        worker.removeAllListeners('error');
        if ('failure' in answer) {
          process.stderr.write(`${id} could not be diagnosed: ${answer.failure}\n`);
          process.exitCode = 1;
          diagnoses.set(id, { beams: [] });
        } else diagnoses.set(id, answer.diagnosis);
        process.stderr.write(`${id} ${((performance.now() - started) / 1000).toFixed(1)} s\n`);
      }
    } finally {
      await worker.terminate();
    }
  };
  await Promise.all(Array.from({ length: Math.min(jobs, logs.length) }, work));
  return diagnoses;
}

async function readyDiagnoses(logs: readonly LabelledLog[], folder: string): Promise<Map<string, StatedDiagnosis>> {
  return new Map(
    await Promise.all(
      logs.map(async ({ id }) => {
        const diagnosis: StatedDiagnosis = JSON.parse(await readFile(join(folder, `${id}.json`), 'utf8'));
        return [id, diagnosis] as const;
      }),
    ),
  );
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
  const diagnoses =
    options.findings === undefined ? await diagnoseAll(logs, jobs) : await readyDiagnoses(logs, options.findings);
  const beams: ComparedBeam[] = [];
  for (const { id, truth, site } of logs) {
    const diagnosis = diagnoses.get(id) ?? { beams: [] };
    if (options.keep !== undefined)
      await writeFile(join(options.keep, `${id}.json`), `${JSON.stringify(diagnosis, null, 1)}\n`);
    beams.push(...compare(id, truth, diagnosis, await alarmThresholds(site), causeWords));
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
