import { createReadStream } from 'node:fs';
import { type FileHandle, open } from 'node:fs/promises';
import { UsageError } from 'beamkeep';
import { refusedWriting } from '../files/writeWhole.js';
import { jsonLine } from '../say/json.js';
import { type FleetLine, lineStart } from './fleetLine.js';
import { parseLine } from './parseLine.js';
import { textLines } from './textLines.js';

/*
 * The file that grows by a line a log. A line counts once its line feed is written: whatever a kill, a full disk or a
 * power cut leaves behind the last line feed is cut off before the next line is appended.
 */

/** Bytes of one line: a log with thousands of beams stays far below. */
export const longestLine = 256e6;

/** A results file, open for more lines. */
export interface ResultsFile {
  /** Bytes of a torn last line that were cut off. */
  readonly torn: number;
  /** @throws UsageError when the disk refuses; what was written before stays whole */
  append(line: FleetLine): Promise<void>;
  /** Forces all to the disk and ends. */
  close(): Promise<void>;
}

/** Every line of a results file, in order; what is no line is passed by. */
export async function* linesOf(path: string): AsyncGenerator<FleetLine> {
  for await (const { text } of textLines(createReadStream(path), path, longestLine)) {
    const line = parseLine(text);
    if (line !== undefined) yield line;
  }
}

/** Where the last whole line ends [bytes]. */
async function wholeEnd(file: FileHandle, size: number): Promise<number> {
  const block = Buffer.alloc(1 << 16);
  for (let to = size; to > 0; ) {
    const from = Math.max(0, to - block.length);
    const { bytesRead } = await file.read(block, 0, to - from, from);
    const at = block.subarray(0, bytesRead).lastIndexOf(10);
    if (at >= 0) return from + at + 1;
    to = from;
  }
  return 0;
}

/** Whether the file begins as a results file does, or as far as it goes. */
async function isOurs(file: FileHandle, size: number): Promise<boolean> {
  const start = Buffer.alloc(Math.min(size, lineStart.length));
  await file.read(start, 0, start.length, 0);
  return lineStart.startsWith(start.toString());
}

/**
 * Opens a results file, a new one where none is there; a torn last line is cut off.
 *
 * @throws UsageError where it cannot be written, or holds something else: that is left alone
 */
export async function resultsFile(path: string): Promise<ResultsFile> {
  try {
    const file = await open(path, 'a+');
    try {
      const { size } = await file.stat();
      if (!(await isOurs(file, size)))
        throw new UsageError(`${path}: holds something else than the lines of a fleet: name another file`);
      let end = await wholeEnd(file, size);
      const torn = size - end;
      if (torn > 0) await file.truncate(end);
      const write = async (line: FleetLine): Promise<void> => {
        const bytes = Buffer.from(jsonLine(line));
        try {
          await file.appendFile(bytes);
        } catch (error) {
          await file.truncate(end).catch(() => undefined);
          throw refusedWriting(path, error);
        }
        end += bytes.length;
      };
      let last = Promise.resolve();
      return {
        torn,
        append: (line) => {
          last = last.then(() => write(line)); // One after the other: two at once could run into each other.
          return last;
        },
        close: async () => {
          await file.sync().finally(() => file.close());
        },
      };
    } catch (error) {
      await file.close();
      throw error;
    }
  } catch (error) {
    throw refusedWriting(path, error);
  }
}
