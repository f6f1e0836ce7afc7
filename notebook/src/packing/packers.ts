import { proxy, type Remote, wrap } from 'comlink';
import type { OpenedFile } from './opened.js';
import type { Packing } from './packing.js';
import { isZipped } from './pieces.js';

/*
 * Workers for one sheet file, which end with it. A log is cut into pieces, and several are worked on at once.
 */

/** Length of a piece [bytes]. */
const pieceLength = 8 * 1024 * 1024;

/** Workers that pack at once: two keep a small machine answerable, more than four gain little. */
const packers = (): number => Math.max(2, Math.min(4, (navigator.hardwareConcurrency || 2) - 1));

/** A file as the texts of base64 that stand for it. */
export interface PackedFile {
  readonly base64: readonly Blob[];
  readonly zipped: boolean;
}

/** The work on one sheet file was given up. */
export class GivenUp extends Error {
  override readonly name = 'GivenUp';
}

/**
 * Packs files.
 *
 * @param files the files
 * @param tell told how far it has come [0 to 1]
 * @param signal gives it up: the workers end at once
 * @throws GivenUp
 */
export function packedFiles(
  files: readonly Blob[],
  tell: (share: number) => void,
  signal: AbortSignal,
): Promise<PackedFile[]> {
  return atWork(packers(), signal, async (workers) => {
    const packed = await Promise.all(
      files.map(async (file) => ({ file, zip: !(await isZipped(file)), base64: [] as Blob[] })),
    );
    const pieces = packed.flatMap(({ file, zip, base64 }) =>
      Array.from({ length: Math.ceil(file.size / pieceLength) }, (_, row) => async (worker: Remote<Packing>) => {
        const from = row * pieceLength;
        base64[row] = await worker.packedPiece(file.slice(from, from + pieceLength), zip);
      }),
    );
    let [next, done] = [0, 0];
    await Promise.all(
      workers.map(async (worker) => {
        for (let piece = pieces[next++]; piece; piece = pieces[next++]) {
          await piece(worker());
          done++;
          tell(done / pieces.length);
        }
      }),
    );
    return packed.map(({ zip, base64 }) => ({ base64, zipped: zip }));
  });
}

/**
 * Opens a sheet file.
 *
 * @param file the file
 * @param tell told how far it has come [0 to 1]
 * @param signal gives it up
 * @throws GivenUp, and an Error in words where the file cannot be opened
 */
export const unpackedFile = (file: Blob, tell: (share: number) => void, signal: AbortSignal): Promise<OpenedFile> =>
  atWork(1, signal, async ([worker]) => {
    if (!worker) throw new Error('no worker was started');
    return worker().openedFile(file, proxy(tell));
  });

/** Does work with some workers, each started when it is first needed, and ends them. */
async function atWork<T>(
  count: number,
  signal: AbortSignal,
  work: (workers: readonly (() => Remote<Packing>)[]) => Promise<T>,
): Promise<T> {
  const started: Worker[] = [];
  const start = (): Remote<Packing> => {
    const worker = new Worker(new URL('./packing.ts', import.meta.url), { type: 'module', name: 'beamkeep packing' });
    started.push(worker);
    return wrap<Packing>(worker);
  };
  const workers = Array.from({ length: count }, () => {
    let mine: Remote<Packing> | undefined;
    return () => (mine ??= start());
  });
  let abort: () => void = () => undefined;
  const givenUp = new Promise<never>((_, reject) => {
    abort = () => reject(new GivenUp('given up'));
    signal.addEventListener('abort', abort);
  });
  try {
    return await Promise.race([work(workers), givenUp]);
  } finally {
    signal.removeEventListener('abort', abort);
    for (const worker of started) worker.terminate();
  }
}
