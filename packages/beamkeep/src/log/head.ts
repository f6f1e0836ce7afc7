import { strFromU8 } from 'fflate';
import { UsageError } from '../columns/index.js';
import { quoted } from '../site/index.js';
import { carriageReturn, cellsOf, newline } from './cells.js';

/** The beginning of a log: what its header says, and some of its lines to learn from. */
export interface LogHead {
  readonly file: string;
  /** Names of the columns. */
  readonly names: readonly string[];
  /** Line of the header: 1, or later where empty lines stand before it. */
  readonly headerLine: number;
  /** Separator of cells, one character. */
  readonly separator: string;
  /** Cells of the first whole lines, those of the right number of cells only. */
  readonly lines: readonly (readonly string[])[];
  /** Where the first line after the header begins. */
  readonly dataFrom: number;
}

/** Lines that are looked at to learn how times and cells are written. */
const linesLookedAt = 200;

const separators = ['\t', ';', ','] as const;

/**
 * Reads the beginning of a log.
 *
 * @param bytes the beginning, cut anywhere
 * @param all whether this is the whole log
 * @throws UsageError where this is no log: empty, no header, not text
 */
export function logHead(file: string, bytes: Uint8Array, all: boolean): LogHead {
  refuseBinary(file, bytes);
  const { texts, lineOf, headerLine, dataFrom } = firstLines(bytes, all);
  const header = texts[0];
  if (header === undefined) throw new UsageError(`${file}: the file is empty`);
  const separator = separatorOf(texts);
  const names = cellsOf(header, separator);
  if (names === undefined) throw new UsageError(`${lineOf}: a quote is left open in the header (${quoted(header)})`);
  while (names.length > 1 && names.at(-1) === '') names.pop();
  const lines: string[][] = [];
  for (const text of texts.slice(1)) {
    const cells = cellsOf(text, separator);
    if (cells === undefined) continue;
    while (cells.length > names.length && cells.at(-1) === '') cells.pop();
    if (cells.length === names.length) lines.push(cells);
  }
  return { file, names, headerLine, separator, lines, dataFrom };

  function firstLines(from: Uint8Array, whole: boolean) {
    const texts: string[] = [];
    let line = 0;
    let headerLine = 0;
    let dataFrom = 0;
    let at = from[0] === 0xef && from[1] === 0xbb && from[2] === 0xbf ? 3 : 0;
    while (at < from.length && texts.length <= linesLookedAt) {
      const end = from.indexOf(newline, at);
      if (end < 0 && !whole) break;
      const stop = end < 0 ? from.length : end;
      const text = strFromU8(from.subarray(at, from[stop - 1] === carriageReturn ? stop - 1 : stop));
      line++;
      at = stop + 1;
      if (text.trim() === '') continue;
      texts.push(text);
      if (texts.length === 1) {
        headerLine = line;
        dataFrom = Math.min(at, from.length);
      }
    }
    return { texts, lineOf: `${file}:${headerLine}`, headerLine, dataFrom };
  }
}

/** The separator that divides most lines into as many cells as the header has. */
function separatorOf(texts: readonly string[]): string {
  let best: string = ',';
  let bestScore = 0;
  for (const separator of separators) {
    const cells = cellsOf(texts[0] ?? '', separator)?.length ?? 1;
    if (cells < 2) continue;
    let same = 1;
    for (const text of texts.slice(1, 50)) if (cellsOf(text, separator)?.length === cells) same++;
    const score = same + cells / 1e6;
    if (score > bestScore) {
      bestScore = score;
      best = separator;
    }
  }
  return best;
}

/** First bytes of files that are not text, and what to say of them. */
const magic: readonly (readonly [readonly number[], string])[] = [
  [[0x50, 0x4b, 3, 4], 'a zip archive or a spreadsheet: save it as CSV'],
  [[0x1f, 0x8b], 'gzipped twice: unzip it once'],
  [[0xff, 0xfe], 'UTF-16 text: save it as UTF-8'],
  [[0xfe, 0xff], 'UTF-16 text: save it as UTF-8'],
];

function refuseBinary(file: string, bytes: Uint8Array): void {
  for (const [start, what] of magic) {
    if (start.every((byte, at) => bytes[at] === byte)) throw new UsageError(`${file}: this is ${what}`);
  }
  const nul = bytes.indexOf(0);
  if (nul >= 0) {
    let line = 1;
    for (let at = bytes.indexOf(newline); at >= 0 && at < nul; at = bytes.indexOf(newline, at + 1)) line++;
    throw new UsageError(
      `${file}:${line}: not text but binary data (a zero byte): a log is a CSV file, plain or gzipped`,
    );
  }
}
