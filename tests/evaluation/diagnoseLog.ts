import { createReadStream } from 'node:fs';
import { readFile } from 'node:fs/promises';
import { parentPort } from 'node:worker_threads';
import { diagnose } from '../../packages/beamkeep/src/diagnose.js';
import { respond } from '../../packages/beamkeep/src/respond.js';
import { parseSite, type Site } from '../../packages/beamkeep/src/site/index.js';
import type { StatedDiagnosis } from './diagnosisJson.js';
import type { Interval } from './intervals.js';

/*
 * A worker: diagnoses the logs it is sent, one after another, and tells when the equipment would have called fire.
 */

/** What a worker is asked. */
export interface Task {
  readonly log: string;
  readonly site: string;
  /** Whether to diagnose, or only to say when there was fire. */
  readonly diagnoses: boolean;
}

/** What it answers. */
export type Answer =
  | {
      readonly diagnosis: StatedDiagnosis | undefined;
      /** Stretches in which each beam's loss called for fire, by the beam's id. */
      readonly fires: ReadonlyMap<string, readonly Interval[]>;
    }
  | { readonly failure: string };

/** Stretches past the alarm threshold for its delay: fires that nobody latches. */
async function fires(log: string, site: Site): Promise<Map<string, Interval[]>> {
  const beams = site.beams.map((beam) => ({ ...beam, latching: false }));
  const response = await respond([{ name: log, bytes: createReadStream(log) }], { ...site, beams });
  return new Map(
    response.beams.map(({ id, changes }) => {
      const delay = (beams.find((beam) => beam.id === id)?.alarmDelay ?? 0) * 1000;
      const stretches = changes.flatMap(({ time, state }, row): Interval[] => {
        if (state !== 'fire') return [];
        const next = changes[row + 1]?.time;
        return [{ from: Date.parse(time) - delay, to: next ? Date.parse(next) : Number.POSITIVE_INFINITY }];
      });
      return [id, stretches];
    }),
  );
}

async function answered({ log, site, diagnoses }: Task): Promise<Answer> {
  const parsed = parseSite(await readFile(site, 'utf8'), site);
  const source = { name: log, bytes: createReadStream(log) };
  const diagnosis = diagnoses ? (await diagnose([source], parsed)).diagnosis : undefined;
  return { diagnosis, fires: await fires(log, parsed) };
}

parentPort?.on('message', async (task: Task) => {
  try {
    parentPort?.postMessage(await answered(task));
  } catch (error) {
    parentPort?.postMessage({ failure: error instanceof Error ? (error.stack ?? error.message) : String(error) });
  }
});
