import { dataUrl } from '../parts/dataUrl.js';
import { freshCell, freshSheet, type Sheet } from '../sheet/sheet.js';
import { openedSheet, type Packed, sheetText } from '../sheet/sheetFile.js';
import { fromShelf, shelve } from './shelf.js';

/*
 * A sheet to and from one file, with the dropped log files in it where wanted. The files are turned into base64 by
 * the browser (FileReader) and back, piece by piece: the page stays answerable.
 */

/** Bytes turned into base64 at a time: a multiple of 3, so that the pieces can be put one after the other. */
const piece = 3 * 256 * 1024;

/** A sheet as a file, with its log files or without. */
export async function sheetFile(sheet: Sheet, withLogs: boolean): Promise<Blob> {
  const text = sheetText(sheet);
  if (!withLogs) return new Blob([text], { type: 'application/json' });
  const parts: string[] = [text.replace(/\s*\}$/, ''), ',\n "shelf": {'];
  let first = true;
  for (const cell of sheet.cells) {
    if (cell.kind !== 'log' || cell.settings.log.from !== 'shelf') continue;
    const { key } = cell.settings.log;
    const files = await fromShelf(key);
    if (!files) continue;
    parts.push(first ? '' : ',', JSON.stringify(key), ': [');
    first = false;
    for (const [row, { name, blob }] of files.entries()) {
      parts.push(row === 0 ? '' : ',', '{"name": ', JSON.stringify(name), ', "base64": "');
      for (let from = 0; from < blob.size; from += piece) parts.push(await base64(blob.slice(from, from + piece)));
      parts.push('"}');
    }
    parts.push(']');
  }
  parts.push('}\n}');
  return new Blob(parts, { type: 'application/json' });
}

/**
 * A sheet from a file; the log files in it go on the shelf.
 *
 * @throws SheetFileError when the file is no sheet, or damaged
 */
export async function openSheetFile(file: Blob): Promise<Sheet> {
  const { sheet, shelf } = openedSheet(await file.text());
  for (const [key, files] of Object.entries(shelf)) await shelve(key, files.map(unpacked));
  return sheet;
}

function unpacked({ name, base64: text }: Packed[number]): { name: string; blob: Blob } {
  const parts: Uint8Array<ArrayBuffer>[] = [];
  const step = (piece / 3) * 4;
  for (let from = 0; from < text.length; from += step)
    parts.push(Uint8Array.from(atob(text.slice(from, from + step)), (letter) => letter.charCodeAt(0)));
  return { name, blob: new Blob(parts) };
}

const base64 = async (blob: Blob): Promise<string> => (await dataUrl(blob)).replace(/^[^,]*,/, '');

/** A sheet that shows the demo. */
export function demoSheet(): Sheet {
  const { cells } = freshSheet({ from: 'demo' });
  const asked = cells.map((cell) =>
    cell.kind === 'why' ? { ...cell, settings: { at: 'Tue 06:40', beam: null } } : cell,
  );
  const at = asked.findIndex(({ kind }) => kind === 'why');
  return { title: 'Faults on sunny mornings', cells: asked.toSpliced(at + 1, 0, freshCell('events')) };
}
