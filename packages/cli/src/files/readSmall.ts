import { UsageError } from 'beamkeep';
import { logFiles } from 'beamkeep/node';
import type { Io } from '../io.js';

/** Above it, something else was named by mistake [bytes]. */
const largest = 16_000_000;

/**
 * A small file as a whole: an aim scan, a proof sheet, a panel's list; `-` is standard input.
 *
 * @throws UsageError where it cannot be read, or is no small file
 */
export async function readSmall(path: string, io: Io): Promise<Uint8Array> {
  const [file] = await logFiles([path], path === '-' ? io.stdin : undefined);
  const pieces: Uint8Array[] = [];
  let size = 0;
  for await (const piece of file?.bytes ?? []) {
    size += piece.length;
    if (size > largest) throw new UsageError(`${path}: more than ${largest / 1e6} MB: is this the right file?`);
    pieces.push(piece.slice());
  }
  return Buffer.concat(pieces);
}

/** The same as text. */
export const readText = async (path: string, io: Io): Promise<string> =>
  new TextDecoder().decode(await readSmall(path, io));
