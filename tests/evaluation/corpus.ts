import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import * as v from 'valibot';
import { UsageError } from '../../packages/beamkeep/src/columns/index.js';
import { type Corpus, corpusSchema, type Truth, truthSchema } from './truth.js';

/** Reads a JSON file and checks it; an error names the file and the key. */
async function read<S extends v.GenericSchema>(path: string, schema: S): Promise<v.InferOutput<S>> {
  let json: unknown;
  try {
    json = JSON.parse(await readFile(path, 'utf8'));
  } catch (error) {
    throw new UsageError(`${path}: ${error instanceof Error ? error.message : String(error)}`);
  }
  const result = v.safeParse(schema, json);
  if (result.success) return result.output;
  const issue = result.issues[0];
  throw new UsageError(`${path}: ${v.getDotPath(issue) ?? 'file'}: ${issue.message}`);
}

/** One labelled log with its truth read; log and site as paths. */
export interface LabelledLog {
  readonly id: string;
  readonly log: string;
  readonly site: string;
  readonly truth: Truth;
}

/**
 * Reads the labelled logs of a folder.
 *
 * @param only names of logs to keep; all when empty
 * @throws UsageError where a file is missing or is not what it should be
 */
export async function readCorpus(folder: string, only: readonly string[]): Promise<LabelledLog[]> {
  const corpus: Corpus = await read(join(folder, 'index.json'), corpusSchema);
  const unknown = only.find((id) => !corpus.logs.some((log) => log.id === id));
  if (unknown !== undefined) throw new UsageError(`--only ${unknown}: no such log in ${folder}`);
  return Promise.all(
    corpus.logs
      .filter(({ id }) => only.length === 0 || only.includes(id))
      .map(async ({ id, log, site, truth }) => ({
        id,
        log: join(folder, log),
        site: join(folder, site),
        truth: await read(join(folder, truth), truthSchema),
      })),
  );
}
