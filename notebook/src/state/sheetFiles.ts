import type { LogFile } from '../bench/reading.js';
import { packedFiles, unpackedFile } from '../packing/packers.js';
import { type Cell, newId, type Sheet } from '../sheet/sheet.js';
import { sheetText } from '../sheet/sheetFile.js';
import type { Tell } from './atWork.js';
import { deskOf } from './desk.js';
import { fromShelf, shelve } from './shelf.js';

/*
 * A sheet to and from one file, with its logs in it where wanted: whole, as they were dropped, or reduced. Gzip, base64
 * and JSON of a log are the workers' (`packing/`): the page puts the file together from pieces that it never reads.
 */

/** What of its logs a sheet file holds. */
export type LogsAlong = 'none' | 'reduced' | 'whole';

/**
 * A sheet as a file.
 *
 * @param sheet the sheet
 * @param along what of its logs goes with it; a log that is not read cannot be reduced and goes along whole
 * @param tell told how far it has come
 * @param signal gives it up
 */
export async function sheetFile(sheet: Sheet, along: LogsAlong, tell: Tell, signal: AbortSignal): Promise<Blob> {
  if (along === 'none') return new Blob([sheetText(sheet)], { type: 'application/json' });
  const shelf = new Map<string, readonly LogFile[]>();
  const cells = await Promise.all(
    sheet.cells.map(async (cell): Promise<Cell> => {
      if (cell.kind !== 'log' || cell.settings.log.from !== 'shelf') return cell;
      const { key } = cell.settings.log;
      const files = await fromShelf(key);
      const reduced = along === 'reduced' && files ? await reducedFile(cell.id, files) : undefined;
      if (!reduced) {
        if (files) shelf.set(key, files);
        return cell;
      }
      const own = newId();
      shelf.set(own, [reduced]);
      return { ...cell, settings: { ...cell.settings, log: { from: 'shelf', key: own, names: [reduced.name] } } };
    }),
  );
  const packed = await packedFiles(
    [...shelf.values()].flat().map(({ blob }) => blob),
    tell,
    signal,
  );
  const parts: BlobPart[] = [sheetText({ ...sheet, cells }).replace(/\s*\}$/, ''), ',\n "shelf": {'];
  let next = 0;
  for (const [place, [key, files]] of [...shelf].entries()) {
    parts.push(place === 0 ? '' : ',', JSON.stringify(key), ': [');
    for (const [row, { name }] of files.entries()) {
      const { base64, zipped } = packed[next++] ?? { base64: [], zipped: false };
      parts.push(row === 0 ? '' : ',', `{"name": ${JSON.stringify(name)}, "zipped": ${zipped}, "base64": [`);
      parts.push(...base64.flatMap((piece, at) => [at === 0 ? '"' : ',"', piece, '"']), ']}');
    }
    parts.push(']');
  }
  parts.push('}\n}');
  return new Blob(parts, { type: 'application/json' });
}

/** The reduced log of a cell, when its log has been read. */
async function reducedFile(cell: string, files: readonly LogFile[]): Promise<LogFile | undefined> {
  const state = deskOf(cell).state.value;
  if (state.is !== 'read') return undefined;
  const [first] = files;
  const name = first?.name ?? 'log';
  return { name: name.endsWith('.reduced') ? name : `${name}.reduced`, blob: await state.bench.packedLog() };
}

/** A sheet out of its file. */
export interface SheetOpened {
  readonly sheet: Sheet;
  /** Whether the browser keeps the logs that came with it for the next visit. */
  readonly stays: boolean;
}

/**
 * A sheet from a file; the log files in it go on the shelf, all of them or none.
 *
 * They lie there under keys of their own, whatever they are called in the file: a log that is at hand under the same
 * key stays, so that undo brings it back, and what came out of the file is read anew.
 *
 * @param file the file
 * @param tell told how far it has come
 * @param signal gives it up
 * @throws Error in words when the file is no sheet, or damaged
 */
export async function openSheetFile(file: Blob, tell: Tell, signal: AbortSignal): Promise<SheetOpened> {
  const { sheet, shelf } = await unpackedFile(file, tell, signal);
  const keys = new Map(shelf.map(([key]) => [key, newId()]));
  const cells = sheet.cells.map((cell): Cell => {
    if (cell.kind !== 'log' || cell.settings.log.from !== 'shelf') return cell;
    const { log } = cell.settings;
    return { ...cell, settings: { ...cell.settings, log: { ...log, key: keys.get(log.key) ?? log.key } } };
  });
  const kept = await Promise.all(shelf.map(([key, files]) => shelve(keys.get(key) ?? key, files)));
  return { sheet: { ...sheet, cells }, stays: !kept.includes(false) };
}
