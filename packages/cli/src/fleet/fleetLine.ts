import { stat } from 'node:fs/promises';
import { resolve } from 'node:path';
import { type DiagnosisJson, diagnose, UsageError } from 'beamkeep';
import { logFiles } from 'beamkeep/node';
import { readSite } from '../files/readSite.js';
import type { Io } from '../io.js';
import { version } from '../version.js';
import { fleetLog } from './fleetLog.js';

/** A file as it was when it was read: where it has changed since, its log is read again. */
export interface FileState {
  readonly name: string;
  readonly bytes: number;
  readonly modified: string;
}

/**
 * What one log gives: one line of JSON. Whoever makes it needs nothing but the files of the log, so lines can be made
 * in any order, on any machine, and be joined by putting files one behind the other.
 */
export interface FleetLine {
  readonly format: typeof fleetFormat;
  /** Of beamkeep. */
  readonly version: string;
  readonly log: string;
  /** The log's files, then the site file; empty where they are not known, so that the next run tries again. */
  readonly files: readonly FileState[];
  readonly diagnosis?: DiagnosisJson;
  /** Why the log gave no diagnosis; there is always one of the two. */
  readonly error?: string;
}

export const fleetFormat = 'beamkeep-fleet/1';

/** How every line begins, so that a file of something else is not taken for one. */
export const lineStart = `{"format":"${fleetFormat}"`;

/** The files of a log as they are now; none where the log lacks something. */
export async function fileStates(name: string, root = '.'): Promise<FileState[]> {
  try {
    const { logs, site } = await fleetLog(name, root);
    return await Promise.all(
      [...logs, site].map(async (file) => {
        const { size, mtime } = await stat(resolve(root, file));
        return { name: file, bytes: size, modified: mtime.toISOString() };
      }),
    );
  } catch {
    return [];
  }
}

/** A line that tells why a log gave no diagnosis. */
export const errorLine = (log: string, files: readonly FileState[], error: string): FleetLine => ({
  format: fleetFormat,
  version,
  log,
  files,
  error,
});

/** Diagnoses one log. Never throws: what is wrong, a fault of our own included, is told in the line, and the rest go on. */
export async function fleetLine(log: string, io: Io): Promise<FleetLine> {
  const files = await fileStates(log);
  try {
    const { logs, site: siteName } = await fleetLog(log);
    const site = await readSite(siteName, io, []);
    // There is a member for every core already: none of them reads on a second thread.
    const sources = (await logFiles(logs)).map(({ elsewhere: _, ...file }) => file);
    const { diagnosis } = await diagnose(sources, site);
    return { format: fleetFormat, version, log, files, diagnosis };
  } catch (error) {
    if (error instanceof UsageError) return errorLine(log, files, error.message);
    return errorLine(log, files, `beamkeep itself failed on it: ${error instanceof Error ? error.message : 'unknown'}`);
  }
}
