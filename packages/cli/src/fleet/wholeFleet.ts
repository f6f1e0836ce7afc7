import { stat } from 'node:fs/promises';
import { join } from 'node:path';
import { version } from '../version.js';
import { type FileState, type FleetLine, fileStates } from './fleetLine.js';
import { fleetNames } from './fleetLog.js';
import { byMembers } from './members.js';
import { linesOf, resultsFile } from './resultsFile.js';
import { sooner, type Visit, type Visits, visitsOf } from './visits.js';

/** How a run stands at its start. */
export interface Start {
  readonly logs: number;
  /** Logs whose line is there already. */
  readonly done: number;
  /** Bytes of a torn last line that were cut off. */
  readonly torn: number;
}

/** Who wants to know what, while a fleet is under way. */
export interface Watcher {
  started(start: Start): void;
  ready(line: FleetLine): void;
}

/** What is kept of a line once it lies in the file. */
interface Kept {
  readonly fresh: boolean;
  readonly visits: readonly Visit[];
  readonly error: string | undefined;
}

const same = (a: readonly FileState[], b: readonly FileState[]): boolean =>
  a.length === b.length &&
  a.every((one, at) => {
    const other = b[at];
    return one.name === other?.name && one.bytes === other.bytes && one.modified === other.modified;
  });

/** Whether a line still holds: of this version, from files that have not changed since. */
async function holds({ log, files, version: of }: FleetLine, folder: string): Promise<boolean> {
  return of === version && same(files, await fileStates(log, folder));
}

/** Largest first, so that at the end no core waits for another's long log. */
async function largestFirst(names: readonly string[], folder: string): Promise<string[]> {
  const sized = await Promise.all(
    names.map(async (name) => ({
      name,
      size: await stat(join(folder, name)).then(
        ({ size }) => size,
        () => 0,
      ),
    })),
  );
  return sized.sort((a, b) => b.size - a.size).map(({ name }) => name);
}

/**
 * Diagnoses every log of a folder that has no line in the results file yet, on several processes; each line is
 * appended as soon as it is ready.
 *
 * @returns what all logs of the folder come to, those of earlier runs included
 * @throws UsageError where the folder or the file cannot be used
 */
export async function wholeFleet(folder: string, out: string, jobs: number, watcher: Watcher): Promise<Visits> {
  const names = await fleetNames(folder);
  const present = new Set(names);
  const results = await resultsFile(out);
  try {
    const kept = new Map<string, Kept>();
    const keep = (line: FleetLine, fresh: boolean) =>
      kept.set(line.log, { fresh, visits: visitsOf(line), error: line.error });
    for await (const line of linesOf(out)) {
      if (present.has(line.log)) keep(line, await holds(line, folder));
    }
    const due = names.filter((name) => kept.get(name)?.fresh !== true);
    watcher.started({ logs: names.length, done: names.length - due.length, torn: results.torn });
    await byMembers(await largestFirst(due, folder), folder, jobs, async (line) => {
      await results.append(line);
      keep(line, true);
      watcher.ready(line);
    });
    return {
      format: 'beamkeep-visits/1',
      logs: names.length,
      beams: [...kept.values()].flatMap(({ visits }) => visits).sort(sooner),
      unusable: names.flatMap((log) => {
        const error = kept.get(log)?.error;
        return error === undefined ? [] : [{ log, error }];
      }),
    };
  } finally {
    await results.close();
  }
}
