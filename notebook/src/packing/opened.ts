import type { LogFile } from '../bench/reading.js';
import type { Sheet } from '../sheet/sheet.js';
import { openedSheet, type Packed, SheetFileError } from '../sheet/sheetFile.js';
import { lifted, type Stretch } from './lifted.js';
import { unpackedPiece } from './pieces.js';

/** A sheet out of its file, and the logs that came with it. */
export interface OpenedFile {
  readonly sheet: Sheet;
  /** By the key under which the sheet names them. */
  readonly shelf: readonly (readonly [key: string, files: readonly LogFile[]])[];
}

/**
 * Opens a sheet file, all of it or nothing.
 *
 * @param file the file
 * @param tell told how far it has come [0 to 1]
 * @throws SheetFileError when it is no sheet, or damaged
 */
export async function openedFile(file: Blob, tell: (share: number) => void): Promise<OpenedFile> {
  const size = Math.max(1, file.size);
  const { text, stretches } = await lifted(file, (done) => tell((0.2 * done) / size)).catch((error: unknown) => {
    throw new SheetFileError((error as Error).message);
  });
  const { sheet, shelf } = openedSheet(text);
  let done = 0;
  const more = (letters: number): void => {
    done += letters;
    tell(0.2 + (0.8 * done) / size);
  };
  const unpacked: (readonly [string, LogFile[]])[] = [];
  for (const [key, packed] of Object.entries(shelf)) {
    const files: LogFile[] = [];
    for (const one of packed) files.push(await unpackedFile(file, stretches, one, more));
    unpacked.push([key, files]);
  }
  return { sheet, shelf: unpacked };
}

async function unpackedFile(
  file: Blob,
  stretches: readonly Stretch[],
  { name, base64, zipped }: Packed[number],
  more: (letters: number) => void,
): Promise<LogFile> {
  const pieces: Blob[] = [];
  try {
    for (const row of base64) {
      const { from, to } = stretches[Number(row)] as Stretch;
      pieces.push(await unpackedPiece(file.slice(from, to), zipped, more));
    }
  } catch (error) {
    throw new SheetFileError(`the log "${name}" in it is damaged (${(error as Error).message})`);
  }
  return { name, blob: new Blob(pieces) };
}
