import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { UsageError } from 'beamkeep/columns';
import type { LogSource } from 'beamkeep/log';
import type { Io } from '../io.js';
import { refusal } from './refusal.js';

/** The logs named on the command line, ready to be read, and how much there is to read. */
export interface LogInput {
  readonly sources: readonly LogSource[];
  /** Bytes as they lie on the disk, packed or not; undefined where standard input is among them. */
  readonly size: number | undefined;
}

async function* fileBytes(path: string): AsyncGenerator<Uint8Array> {
  try {
    yield* createReadStream(path, { highWaterMark: 1 << 20 }) as AsyncIterable<Uint8Array>;
  } catch (error) {
    throw refusal(path, error);
  }
}

async function sizeOf(path: string): Promise<number> {
  try {
    const found = await stat(path);
    if (found.isDirectory()) throw new UsageError(`${path}: this is a folder; name the log files in it`);
    return found.size;
  } catch (error) {
    throw refusal(path, error);
  }
}

/**
 * Sources for the logs of these names, `-` being standard input.
 *
 * @throws UsageError before anything is read, when one of them is not there or is a folder
 */
export async function logSources(paths: readonly string[], io: Io): Promise<LogInput> {
  if (paths.filter((path) => path === '-').length > 1) {
    throw new UsageError('LOG: "-" (standard input) can stand only once');
  }
  const sizes = await Promise.all(paths.filter((path) => path !== '-').map(sizeOf));
  return {
    sources: paths.map((path) =>
      path === '-' ? { name: 'standard input', bytes: io.stdin } : { name: path, bytes: fileBytes(path) },
    ),
    size: paths.includes('-') ? undefined : sizes.reduce((a, b) => a + b, 0),
  };
}
