import { stat } from 'node:fs/promises';
import { parseSite, type Site, UsageError } from 'beamkeep';
import { siteFile } from 'beamkeep/node';
import type { Io } from '../io.js';

/** A site file with thousands of beams is far below this; above it, something else was named by mistake [bytes]. */
const largest = 16_000_000;

const tooLarge = (name: string) =>
  new UsageError(`${name}: more than ${largest / 1e6} MB, too large for a site file; was the log meant?`);

async function everything(stream: AsyncIterable<Uint8Array>, name: string): Promise<Uint8Array> {
  const pieces: Uint8Array[] = [];
  let size = 0;
  for await (const piece of stream) {
    size += piece.length;
    if (size > largest) throw tooLarge(name);
    pieces.push(piece);
  }
  return Buffer.concat(pieces);
}

/**
 * The site of a file, or of standard input for `-`.
 *
 * @param logs the names of the logs beside it: only one of all can be standard input
 * @throws UsageError where it cannot be read, is no JSON or breaks the rules of the site file
 */
export async function readSite(path: string, io: Io, logs: readonly string[]): Promise<Site> {
  if (path === '-') {
    if (logs.includes('-')) {
      throw new UsageError('--site: "-" (standard input) is already the log; give the site file a name');
    }
    const name = 'standard input';
    return parseSite(new TextDecoder().decode(await everything(io.stdin, name)), name);
  }
  const size = await stat(path).then(
    (found) => found.size,
    () => 0, // What is wrong with it is told when it is read.
  );
  if (size > largest) throw tooLarge(path);
  return siteFile(path);
}
