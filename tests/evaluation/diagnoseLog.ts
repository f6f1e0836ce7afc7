import { createReadStream } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { parentPort } from 'node:worker_threads';
import { diagnose } from '../../packages/beamkeep/src/diagnose.js';
import { parseSite } from '../../packages/beamkeep/src/site/index.js';

/*
 * A worker: diagnoses the logs it is sent, one after another, and answers each with the JSON object of the command.
 * Whoever sends takes the time.
 */

/** What a worker is asked. */
export interface Task {
  readonly log: string;
  readonly site: string;
}

parentPort?.on('message', async ({ log, site }: Task) => {
  try {
    const parsed = parseSite(await readFile(site, 'utf8'), site);
    const { diagnosis } = await diagnose([{ name: log, bytes: createReadStream(log) }], parsed, {});
    parentPort?.postMessage({ diagnosis });
  } catch (error) {
    parentPort?.postMessage({ failure: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  }
});
