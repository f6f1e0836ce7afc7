import { readFile, stat } from 'node:fs/promises';
import { UsageError } from 'beamkeep/columns';
import { parseSite, type Site } from 'beamkeep/site';
import type { Io } from '../io.js';
import { refusal } from './refusal.js';

/** A site file with thousands of beams is far below this; above it, something else was named by mistake. */
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

async function bytesOf(path: string): Promise<Uint8Array> {
  try {
    const found = await stat(path);
    if (found.size > largest) throw tooLarge(path);
    return await readFile(path);
  } catch (error) {
    throw refusal(path, error);
  }
}

/**
 * The site of a file, or of standard input for `-`.
 *
 * @param logs the names of the logs beside it: only one of all can be standard input
 * @throws UsageError where it cannot be read, is no JSON or breaks the rules of the site file
 */
export async function readSite(path: string, io: Io, logs: readonly string[]): Promise<Site> {
  if (path === '-' && logs.includes('-')) {
    throw new UsageError('--site: "-" (standard input) is already the log; give the site file a name');
  }
  const name = path === '-' ? 'standard input' : path;
  const bytes = path === '-' ? await everything(io.stdin, name) : await bytesOf(path);
  return parseSite(new TextDecoder().decode(bytes), name);
}
