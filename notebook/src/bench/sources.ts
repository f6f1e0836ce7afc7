import { type DiagnoseQuestion, type Diagnosis, diagnosisOf, type LogSource, UsageError } from 'beamkeep';
import type { Site } from 'beamkeep/site';
import { bytesOf } from './bytesOf.js';
import { isPackedLog, unpackedLog } from './packedRecords.js';
import type { LogFile } from './reading.js';
import { rowsAside } from './rowsAside.js';

/** How long the files are together [bytes]. */
export const sizeOf = (files: readonly LogFile[]): number => files.reduce((sum, { blob }) => sum + blob.size, 0);

/** The one file of a log that was reduced; undefined where the files hold samples. */
export async function reducedOf(files: readonly LogFile[]): Promise<LogFile | undefined> {
  for (const file of files) {
    if (!(await isPackedLog(file.blob))) continue;
    if (files.length > 1) throw new UsageError(`${file.name}: a reduced log cannot be joined with other files.`);
    return file;
  }
  return undefined;
}

/** The diagnosis of a reduced log, and its records. */
export async function explained({ name, blob }: LogFile, site: Site, question: DiagnoseQuestion): Promise<Diagnosis> {
  const { records, input } = await unpackedLog(name, blob, site);
  return { records, diagnosis: diagnosisOf(records, site, input, question) };
}

/** The files as the library reads them. */
export function sourcesOf(files: readonly LogFile[]): LogSource[] {
  const elsewhere = rowsAside(files);
  return files.map(({ name, blob }) => ({ name, bytes: bytesOf(blob), elsewhere }));
}
