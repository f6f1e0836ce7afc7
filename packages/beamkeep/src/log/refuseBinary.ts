import { UsageError } from '../columns/index.js';
import { newline } from './cells.js';

/** First bytes of files that are not text, and what to say of them. */
const beginnings: readonly (readonly [readonly number[], string])[] = [
  [[0x50, 0x4b, 3, 4], 'a zip archive or a spreadsheet: save it as CSV'],
  [[0x1f, 0x8b], 'gzipped twice: unzip it once'],
  [[0xff, 0xfe], 'UTF-16 text: save it as UTF-8'],
  [[0xfe, 0xff], 'UTF-16 text: save it as UTF-8'],
];

/**
 * Refuses what is not text.
 *
 * @param bytes the beginning of a file
 * @throws UsageError that says what it seems to be
 */
export function refuseBinary(file: string, bytes: Uint8Array): void {
  for (const [start, what] of beginnings) {
    if (start.every((byte, at) => bytes[at] === byte)) throw new UsageError(`${file}: this is ${what}`);
  }
  const zero = bytes.indexOf(0);
  if (zero < 0) return;
  let line = 1;
  for (let at = bytes.indexOf(newline); at >= 0 && at < zero; at = bytes.indexOf(newline, at + 1)) line++;
  throw new UsageError(
    `${file}:${line}: not text but binary data (a zero byte): a log is a CSV file, plain or gzipped`,
  );
}
