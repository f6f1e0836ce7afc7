import { Gunzip } from 'fflate';

/*
 * The first lines of a log, so that a person can say what its columns are. The reading itself takes no part in this:
 * it finds out everything anew.
 */

/** Columns of a log and its first lines, cell by cell. */
export interface Peeked {
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

/** Bytes that are looked at, as the file stands. */
const looked = 32 * 1024;
const rowsShown = 6;

/** The head of a log file, plain or gzipped. */
export async function peeked(blob: Blob): Promise<Peeked> {
  const bytes = new Uint8Array(await blob.slice(0, looked).arrayBuffer());
  const zipped = bytes[0] === 0x1f && bytes[1] === 0x8b;
  return head(new TextDecoder().decode(zipped ? unzippedHead(bytes) : bytes));
}

function unzippedHead(bytes: Uint8Array): Uint8Array {
  const parts: Uint8Array[] = [];
  const unzip = new Gunzip((part) => parts.push(part));
  try {
    unzip.push(bytes);
  } catch {
    // What came out before the damage is what can be shown.
  }
  const whole = new Uint8Array(parts.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const part of parts) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}

/** Columns and first lines of a text. */
export function head(text: string): Peeked {
  const lines = text.split(/\r\n|\n|\r/, rowsShown + 2).filter((line) => line.trim() !== '');
  const [first = '', ...others] = lines;
  const separator = [';', '\t', ','].find((mark) => first.includes(mark)) ?? ',';
  const cells = (line: string): string[] => line.split(separator).map(unquoted);
  return { columns: cells(first), rows: others.slice(0, rowsShown).map(cells) };
}

const unquoted = (cell: string): string => {
  const bare = cell.trim();
  return bare.length > 1 && bare.startsWith('"') && bare.endsWith('"') ? bare.slice(1, -1).replace(/""/g, '"') : bare;
};
