import { UsageError } from '../columns/index.js';
import type { Site } from '../site/index.js';
import { carriageReturn, newline } from './cells.js';
import { EmptyLog, type LogHead, logHead } from './head.js';
import type { LogSource } from './logSource.js';
import { shownName } from './shownName.js';
import { isUndecided } from './timeFormats.js';
import { unzipped } from './unzipped.js';

/** Bytes that are looked at to learn how a log is written. */
const headBytes = 1 << 18;
/** Lines that are looked at. */
const headLines = 200;
/** Most bytes that are looked at to tell day from month. */
const mostHeadBytes = 1 << 25;
/** Longest line [bytes]: longer ones are no log, and are not held in memory. */
export const longestLine = 1 << 20;

/** What is said of a line that is too long. */
export const tooLong = (file: string, line: number): UsageError =>
  new UsageError(
    `${file}:${line}: a line longer than ${longestLine / (1 << 20)} MiB: this is no log, or its line ends are missing`,
  );

/** A log whose beginning is known. */
export interface OpenLog {
  readonly head: LogHead;
  /** The bytes after the header; asked for once. */
  data(): AsyncIterable<Uint8Array>;
  /** What was wrong with the bytes themselves, once they have been read. */
  damage(): string | undefined;
  close(): Promise<void>;
}

/** Counts bytes as they are read, and stops where reading was cancelled. */
export type Watch = (bytes: AsyncIterable<Uint8Array>) => AsyncIterable<Uint8Array>;

/**
 * Opens a log and reads its beginning.
 *
 * @param site says where time stands
 * @param oneOfMany a log that can be read again is then closed until its turn comes
 */
export async function openLog(source: LogSource, site: Site, watch: Watch, oneOfMany: boolean): Promise<OpenLog> {
  const name = shownName(source.name);
  let damage: string | undefined;
  const start = (watched: Watch) =>
    unzipped(watched(source.bytes), source, (what) => {
      damage = what;
    });
  const canRestart = oneOfMany && source.restarts === true;
  let chunks = start(canRestart ? (bytes) => bytes : watch)[Symbol.asyncIterator]();
  let held: Uint8Array<ArrayBuffer> = new Uint8Array(0);
  let whole = false;
  /** Reads on until so many bytes are held, and at least one line. */
  const hold = async (bytes: number): Promise<void> => {
    let length = held.length;
    const pieces = [held];
    let lineSeen = held.includes(newline) || held.includes(carriageReturn);
    while (!whole && (length < bytes || !lineSeen)) {
      const { done, value } = await chunks.next();
      if (done) whole = true;
      else {
        pieces.push(value.slice());
        length += value.length;
        lineSeen ||= value.includes(newline) || value.includes(carriageReturn);
        if (!lineSeen && length > longestLine) throw tooLong(name, 1);
      }
    }
    held = new Uint8Array(length);
    let at = 0;
    for (const piece of pieces) {
      held.set(piece, at);
      at += piece.length;
    }
  };
  const beginning = async () => {
    await hold(headBytes);
    const loneReturns = !held.includes(newline) && held.includes(carriageReturn);
    if (loneReturns) withNewlines(held);
    let head = logHead(name, held, whole, headLines);
    for (
      let bytes = headBytes;
      bytes <= mostHeadBytes && isUndecided(head, site);
      bytes = whole ? Number.POSITIVE_INFINITY : 4 * bytes
    ) {
      const from = held.length;
      await hold(bytes);
      if (loneReturns) withNewlines(held.subarray(from));
      head = logHead(name, held, whole, Number.POSITIVE_INFINITY);
    }
    if (whole && head.lines.length === 0 && head.firstTrouble === undefined) {
      throw new EmptyLog(`${name}:${head.headerLine + 1}: the log ends after its header: there is no line of data`);
    }
    return { head, loneReturns };
  };
  const { head, loneReturns } = await beginning().catch(async (error: unknown) => {
    await chunks.return?.(undefined); // A refused log is let go of: many are read in one run.
    throw error;
  });
  const { dataFrom } = head;
  if (canRestart) {
    await chunks.return?.(undefined);
    held = new Uint8Array(0);
    damage = undefined;
  }
  return {
    head,
    async *data() {
      let skip = 0;
      if (canRestart) {
        chunks = start(watch)[Symbol.asyncIterator]();
        skip = dataFrom;
      } else {
        yield held.subarray(dataFrom);
        held = new Uint8Array(0);
      }
      for (;;) {
        const { done, value } = await chunks.next();
        if (done) break;
        if (skip < value.length) {
          const rest = value.subarray(skip);
          yield loneReturns ? withNewlines(rest.slice()) : rest;
        }
        skip = Math.max(0, skip - value.length);
      }
    },
    damage: () => damage,
    async close() {
      await chunks.return?.(undefined);
    },
  };
}

/** Puts newlines where lines end with a carriage return alone. */
function withNewlines(bytes: Uint8Array): Uint8Array {
  for (let at = bytes.indexOf(carriageReturn); at >= 0; at = bytes.indexOf(carriageReturn, at + 1)) bytes[at] = newline;
  return bytes;
}
