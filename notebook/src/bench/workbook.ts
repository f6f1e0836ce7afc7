import { UsageError } from 'beamkeep';
import type { LogFile } from './reading.js';

/*
 * Logs that a person saved as a workbook (XLSX). The first sheet becomes CSV; its reader, like the workbook, is large
 * and comes only when it is needed. Dates of a workbook know no zone: they are clock times of the site.
 */

/** A log file as text: a workbook is turned into CSV, everything else stays as it is. */
export async function plainFile(file: LogFile): Promise<LogFile> {
  const start = new Uint8Array(await file.blob.slice(0, 4).arrayBuffer());
  const isZip = start[0] === 0x50 && start[1] === 0x4b && start[2] === 3 && start[3] === 4;
  if (!isZip) return file;
  const { readSheet } = await import('read-excel-file/web-worker');
  let rows: readonly (readonly unknown[])[];
  try {
    rows = await readSheet(file.blob);
  } catch (error) {
    throw new UsageError(
      `${file.name}: this zip file is not a workbook that can be read (${(error as Error).message}). Save the log as CSV.`,
    );
  }
  const text = rows.map((row) => row.map(workbookCell).join(',')).join('\n');
  return { name: file.name, blob: new Blob([`${text}\n`]) };
}

/** A cell of a workbook as a cell of CSV. */
export function workbookCell(value: unknown): string {
  if (value === null || value === undefined) return '';
  if (value instanceof Date)
    return Number.isNaN(value.getTime()) ? '' : value.toISOString().slice(0, 23).replace('T', ' ');
  const text = String(value);
  return /[",\r\n]/.test(text) ? `"${text.replace(/"/g, '""')}"` : text;
}
