import { strFromU8, strToU8 } from 'fflate';
import { UsageError } from '../columns/index.js';
import { cellCountTrouble, cellNumber, cellsOf } from './cells.js';
import { logHead } from './head.js';
import type { InputNote } from './inputNotes.js';

/** Most bytes of a small table: an aim scan, a panel's list. */
const largest = 16_000_000;

/** A small table of text, read as a whole: columns by name, rows with their line. */
export interface TextTable {
  readonly file: string;
  readonly names: readonly string[];
  /** Cells as written, without blanks and quotes; as many as there are names. */
  readonly rows: readonly { readonly line: number; readonly cells: readonly string[] }[];
  /** The number in a cell; NaN where it is missing, undefined where it is none. */
  numberIn(cell: string): number | undefined;
  /** Lines of another number of cells than the header, which were left out. */
  readonly notes: readonly InputNote[];
}

/**
 * Reads a small table: header line, cells separated by `,` `;` or a tab, as in a log, but of any content.
 *
 * @param bytes the whole file, or its text
 * @param file its name, for errors
 * @throws UsageError where it is empty, no text, or too large
 * @example textTable('angle,level\n0.1,98\n', 'scan.csv').names // angle, level
 */
export function textTable(bytes: Uint8Array | string, file: string): TextTable {
  const all = typeof bytes === 'string' ? strToU8(bytes) : bytes;
  if (all.length > largest) throw new UsageError(`${file}: more than ${largest / 1e6} MB: was a log meant?`);
  const { names, separator, dataFrom, headerLine } = logHead(file, all, true, 50);
  const rows: { line: number; cells: string[] }[] = [];
  const notes: InputNote[] = [];
  let line = headerLine;
  for (const text of strFromU8(all.subarray(dataFrom)).split(/\r?\n/)) {
    line++;
    if (text.trim() === '') continue;
    const cells = cellsOf(text, separator) ?? [];
    while (cells.length > names.length && cells.at(-1) === '') cells.pop();
    if (cells.length === names.length) rows.push({ line, cells });
    else notes.push({ line, lines: 1, what: cellCountTrouble(cells.length, names.length, separator) });
  }
  return { file, names, rows, notes, numberIn: (cell) => cellNumber(cell, separator !== ',') };
}
