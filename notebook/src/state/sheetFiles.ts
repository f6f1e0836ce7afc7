import { dataUrl } from '../parts/dataUrl.js';
import { type Cell, freshCell, freshSheet, newId, type Sheet } from '../sheet/sheet.js';
import { openedSheet, type Packed, SheetFileError, sheetText } from '../sheet/sheetFile.js';
import { deskOf } from './desk.js';
import { fromShelf, shelve } from './shelf.js';

/*
 * A sheet to and from one file, with its logs in it where wanted: whole, as they were dropped, or reduced. Files are
 * gzipped and turned into base64 by the browser and back, piece by piece: the page stays answerable.
 */

/** What of its logs a sheet file holds. */
export type LogsAlong = 'none' | 'reduced' | 'whole';

/** Bytes turned into base64 at a time: a multiple of 3, so that the pieces can be put one after the other. */
const piece = 3 * 256 * 1024;

/** Letters of base64 in one file at most: a browser cannot hold a longer text, so could not open it again. */
const mostLetters = 450e6;

interface OnShelf {
  readonly name: string;
  readonly blob: Blob;
}

/**
 * A sheet as a file.
 *
 * @param sheet the sheet
 * @param along what of its logs goes with it; a log that is not read cannot be reduced and goes along whole
 * @throws Error when the logs are too large for one file; it says what to do
 */
export async function sheetFile(sheet: Sheet, along: LogsAlong): Promise<Blob> {
  if (along === 'none') return new Blob([sheetText(sheet)], { type: 'application/json' });
  const shelf = new Map<string, readonly OnShelf[]>();
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
      // A key of its own: where the whole log still lies on the shelf, it stays.
      const own = newId();
      shelf.set(own, [reduced]);
      return { ...cell, settings: { ...cell.settings, log: { from: 'shelf', key: own, names: [reduced.name] } } };
    }),
  );
  const parts: Part[] = [sheetText({ ...sheet, cells }).replace(/\s*\}$/, ''), ',\n "shelf": {'];
  for (const [place, [key, files]] of [...shelf].entries()) {
    parts.push(place === 0 ? '' : ',', JSON.stringify(key), ': [');
    for (const [row, file] of files.entries()) parts.push(row === 0 ? '' : ',', ...(await entry(file)));
    parts.push(']');
  }
  parts.push('}\n}');
  if (parts.reduce((sum, part) => sum + (typeof part === 'string' ? part.length : part.size), 0) > mostLetters)
    throw new Error(
      'its logs are too large for one file: save it with the reduced log, and keep the whole log beside it',
    );
  return new Blob(parts, { type: 'application/json' });
}

/** The reduced log of a cell, when its log has been read. */
async function reducedFile(cell: string, files: readonly OnShelf[]): Promise<OnShelf | undefined> {
  const state = deskOf(cell).state.value;
  if (state.is !== 'read') return undefined;
  const [first] = files;
  const name = first?.name ?? 'log';
  return { name: name.endsWith('.reduced') ? name : `${name}.reduced`, blob: await state.bench.packedLog() };
}

/** A piece of a file's text; a long one is handed to the browser at once, so that nothing is copied in one breath. */
type Part = string | Blob;

/** A file as an entry of the shelf, in pieces of text. */
async function entry({ name, blob }: OnShelf): Promise<Part[]> {
  const zip = !(await isZipped(blob));
  const packed = zip ? await through(blob, new CompressionStream('gzip')) : blob;
  const parts: Part[] = [`{"name": ${JSON.stringify(name)}, `, zip ? '"zipped": true, ' : '', '"base64": "'];
  for (let from = 0; from < packed.size; from += piece)
    parts.push(new Blob([await base64(packed.slice(from, from + piece))]));
  parts.push('"}');
  return parts;
}

/** Whether to zip a file would gain nothing: gzip, zip, or a reduced log. */
async function isZipped(blob: Blob): Promise<boolean> {
  const start = await blob.slice(0, 9).text();
  const [first, second] = new Uint8Array(await blob.slice(0, 2).arrayBuffer());
  return start === 'beamkeep-' || (first === 0x1f && second === 0x8b) || start.startsWith('PK');
}

/**
 * A sheet from a file; the log files in it go on the shelf, all of them or none.
 *
 * @throws SheetFileError when the file is no sheet, or damaged
 */
export async function openSheetFile(file: Blob): Promise<Sheet> {
  const { sheet, shelf } = openedSheet(await file.text());
  const unpackedFiles: [key: string, files: OnShelf[]][] = [];
  for (const [key, files] of Object.entries(shelf)) {
    const blobs: OnShelf[] = [];
    for (const one of files) blobs.push(await unpacked(one));
    unpackedFiles.push([key, blobs]);
  }
  for (const [key, files] of unpackedFiles) await shelve(key, files);
  return sheet;
}

async function unpacked({ name, base64: text, zipped }: Packed[number]): Promise<OnShelf> {
  const parts: Uint8Array<ArrayBuffer>[] = [];
  const step = (piece / 3) * 4;
  try {
    for (let from = 0; from < text.length; from += step) {
      parts.push(bytesOf(text.slice(from, from + step)));
      await new Promise((resolve) => setTimeout(resolve));
    }
    const blob = new Blob(parts);
    return { name, blob: zipped ? await through(blob, new DecompressionStream('gzip')) : blob };
  } catch (error) {
    throw new SheetFileError(`the log "${name}" in it is damaged (${(error as Error).message})`);
  }
}

function bytesOf(base64Text: string): Uint8Array<ArrayBuffer> {
  const letters = atob(base64Text);
  const bytes = new Uint8Array(letters.length);
  for (let at = 0; at < letters.length; at++) bytes[at] = letters.charCodeAt(at);
  return bytes;
}

const through = (blob: Blob, turned: CompressionStream | DecompressionStream): Promise<Blob> =>
  new Response(blob.stream().pipeThrough(turned)).blob();

const base64 = async (blob: Blob): Promise<string> => (await dataUrl(blob)).replace(/^[^,]*,/, '');

/** What the sheet of the demo is called, until another log lies in it. */
export const demoTitle = 'Why at 06:40 on Tuesdays?';

/** A sheet that shows the demo. */
export function demoSheet(): Sheet {
  const { cells } = freshSheet({ from: 'demo' });
  const asked = cells.map((cell) =>
    cell.kind === 'why' ? { ...cell, settings: { at: 'Tue 06:40', beam: null } } : cell,
  );
  const at = asked.findIndex(({ kind }) => kind === 'why');
  return { title: demoTitle, cells: asked.toSpliced(at + 1, 0, freshCell('events')) };
}
