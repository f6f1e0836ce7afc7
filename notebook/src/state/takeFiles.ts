import { set } from '../sheet/edits.js';
import { type Cell, freshSheet, newId, type Settings } from '../sheet/sheet.js';
import { demoTitle } from './demoSheet.js';
import { openSheet } from './openSheet.js';
import { shelve } from './shelf.js';
import { edit } from './store.js';

/** A site file or a sheet is no larger than this [bytes]; a larger JSON is refused before it is read. */
const largestJson = 2_000_000;

/**
 * Takes dropped or chosen files into a log cell: JSON is a site file (or a saved sheet, which is opened), a CSV with
 * columns `time` and `what` is the panel's list, everything else is the log.
 *
 * @returns what the person should know, or null when all is well
 */
export async function takeFiles(cell: Cell<'log'>, files: readonly File[]): Promise<string | null> {
  if (files.length === 0) return null;
  const json = files.filter(({ name }) => /\.json$/i.test(name));
  const lists = await listsAmong(files);
  const log = files.filter((file) => !json.includes(file) && !lists.includes(file));
  const change: Partial<Settings['log']> = {};
  let told: string | null = null;
  for (const file of json) {
    if (file.size > largestJson && log.length > 0)
      return `${file.name} is too large for a site file (${file.size} bytes).`;
    if (await startsAsSheet(file)) {
      await openSheet(file);
      return null;
    }
    if (file.size > largestJson) return `${file.name} is too large for a site file (${file.size} bytes).`;
    Object.assign(change, { site: { name: file.name, text: await file.text() } });
  }
  if (json.length > 1) told = `Several site files were dropped; ${change.site?.name} is used.`;
  const [list] = lists;
  if (list) Object.assign(change, { events: { name: list.name, text: await list.text() } });
  if (log.length > 0) {
    // A list belongs to its log: a new log does not take the old one's list over.
    if (!list) Object.assign(change, { events: null });
    const key = newId();
    const sorted = log.toSorted((a, b) => (a.name < b.name ? -1 : 1));
    const stays = await shelve(
      key,
      sorted.map((file) => ({ name: file.name, blob: file })),
    );
    Object.assign(change, { log: { from: 'shelf', key, names: sorted.map(({ name }) => name) } });
    if (!stays) told = 'This browser would not keep the log for the next visit: save the sheet with its log.';
  }
  edit((sheet) => {
    const changed = set(sheet, cell, change);
    return log.length > 0 && sheet.title === demoTitle ? { ...changed, title: freshSheet().title } : changed;
  });
  return told;
}

/** Those files whose header line is that of a panel's list. */
async function listsAmong(files: readonly File[]): Promise<File[]> {
  const found: File[] = [];
  for (const file of files) {
    if (file.size > largestJson || !/\.(csv|txt)$/i.test(file.name)) continue;
    const [header = ''] = (await file.slice(0, 400).text()).split(/[\r\n]/);
    const names = header.split(/[,;\t]/).map((name) =>
      name
        .replace(/["\uFEFF]/g, '')
        .trim()
        .toLowerCase(),
    );
    if (names.includes('time') && names.includes('what') && names.length <= 4) found.push(file);
  }
  return found;
}

/** Whether a file begins like a saved sheet. */
async function startsAsSheet(file: File): Promise<boolean> {
  const head = await file.slice(0, 200).text();
  return /"format"\s*:\s*"beamkeep-sheet\//.test(head);
}
