import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { type DiagnosisJson, parseSite } from 'beamkeep';
import { parseDay, record, textTable } from 'beamkeep/commissioning';
import { logFiles } from 'beamkeep/node';

/* The demonstration files of the commissioning day, as the tests and the guide take them. */

/** Folder of the day. */
export const folder = fileURLToPath(new URL('../../datasets/tram-depot/commissioning', import.meta.url));

/** A file of the day as text. */
export const text = (name: string): Promise<string> => readFile(join(folder, name), 'utf8');

/** A small table of the day. */
export const tableOf = async (name: string) => textTable(await text(name), name);

/** A log of the day. */
export async function log(name: string) {
  const [file] = await logFiles([join(folder, name)]);
  if (!file) throw new Error(`no ${name}`);
  return file;
}

/** The site of the tram depot. */
export const depot = async () => parseSite(await text('../site.json'), 'site.json');

/** When the records of the tests are made. */
export const made = Date.parse('2027-01-20T15:00:00Z');

/** The record of the day, some of its keys changed; without the long log, for speed. */
export async function dayRecord(changes: object = {}, diagnosis?: DiagnosisJson) {
  const day = { ...JSON.parse(await text('day.json')), log: [], ...changes };
  return record(parseDay(day, 'day.json'), await depot(), { log, text }, made, diagnosis);
}

/** The record of the day as it is. */
export const demoRecord = () => dayRecord();

/** The record of a day on which nothing was written down. */
export async function emptyRecord() {
  const day = { format: 'beamkeep-day/1', site: '../site.json', date: '2027-01-20', beams: [] };
  return record(parseDay(day), await depot(), { log, text }, made);
}
