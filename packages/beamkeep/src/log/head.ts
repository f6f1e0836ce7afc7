import { strFromU8 } from 'fflate';
import { UsageError } from '../columns/index.js';
import { quoted } from '../site/index.js';
import { carriageReturn, cellCountTrouble, cellsOf, newline } from './cells.js';
import { refuseBinary } from './refuseBinary.js';

/** The beginning of a log: what its header says, and some of its lines to learn from. */
export interface LogHead {
  readonly file: string;
  /** Names of the columns. */
  readonly names: readonly string[];
  /** Line of the header: 1, or later where empty lines stand before it. */
  readonly headerLine: number;
  /** Separator of cells, one character. */
  readonly separator: string;
  /** Cells of the first lines after the header, those of the right number of cells only. */
  readonly lines: readonly (readonly string[])[];
  /** What is wrong with the first line after the header, where it is of no use. */
  readonly firstTrouble: string | undefined;
  /** Where the first line after the header begins. */
  readonly dataFrom: number;
}

/** A log without a line of data. Among several files it may be left out. */
export class EmptyLog extends UsageError {}

const separators = ['\t', ';', ','] as const;

/** Lines that are looked at to tell the separator. */
const linesToDivide = 50;

/**
 * Reads the beginning of a log.
 *
 * @param bytes the beginning, cut anywhere
 * @param whole whether this is the whole log
 * @param mostLines how many lines to learn from
 * @throws EmptyLog where there is no line of data
 * @throws UsageError where this is no log: not text, or a header that cannot be read
 */
export function logHead(file: string, bytes: Uint8Array, whole: boolean, mostLines: number): LogHead {
  refuseBinary(file, bytes);
  const { texts, headerLine, dataFrom } = firstLines(bytes, whole, mostLines);
  const header = texts[0];
  if (header === undefined) throw new EmptyLog(`${file}: the file is empty`);
  const separator = separatorOf(texts);
  const names = cellsOf(header, separator);
  if (names === undefined) {
    throw new UsageError(`${file}:${headerLine}: a quote is left open in the header (${quoted(header)})`);
  }
  while (names.length > 1 && names.at(-1) === '') names.pop();
  const lines: string[][] = [];
  let firstTrouble: string | undefined;
  for (const text of texts.slice(1)) {
    const cells = cellsOf(text, separator) ?? [];
    while (cells.length > names.length && cells.at(-1) === '') cells.pop();
    if (cells.length === names.length) lines.push(cells);
    else firstTrouble ??= `${cellCountTrouble(cells.length, names.length, separator)}: ${quoted(text)}`;
  }
  return { file, names, headerLine, separator, lines, firstTrouble, dataFrom };
}

/** The first lines that are not empty, as text. */
function firstLines(bytes: Uint8Array, whole: boolean, most: number) {
  const texts: string[] = [];
  let line = 0;
  let headerLine = 0;
  let dataFrom = 0;
  let at = bytes[0] === 0xef && bytes[1] === 0xbb && bytes[2] === 0xbf ? 3 : 0;
  while (at < bytes.length && texts.length <= most) {
    const end = bytes.indexOf(newline, at);
    if (end < 0 && !whole) break;
    const stop = end < 0 ? bytes.length : end;
    const text = strFromU8(bytes.subarray(at, bytes[stop - 1] === carriageReturn ? stop - 1 : stop));
    line++;
    at = stop + 1;
    if (text.trim() === '') continue;
    texts.push(text);
    if (texts.length === 1) {
      headerLine = line;
      dataFrom = Math.min(at, bytes.length);
    }
  }
  return { texts, headerLine, dataFrom };
}

/** The separator that divides most lines into as many cells as the header has. */
function separatorOf(texts: readonly string[]): string {
  let best: string = ',';
  let bestScore = 0;
  for (const separator of separators) {
    const cells = cellsOf(texts[0] ?? '', separator)?.length ?? 1;
    if (cells < 2) continue;
    let same = 1;
    for (const text of texts.slice(1, linesToDivide)) if (cellsOf(text, separator)?.length === cells) same++;
    const score = same + cells / 1e7; // Of equals, the one that divides more.
    if (score > bestScore) {
      bestScore = score;
      best = separator;
    }
  }
  return best;
}
