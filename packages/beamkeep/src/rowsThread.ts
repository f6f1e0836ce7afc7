/*
 * The program of the reading thread (threadedRows.ts): reads files and puts their rows into the ring, a slot at a time.
 */
import { parentPort, workerData } from 'node:worker_threads';
import { UsageError } from './columns/index.js';
import { type RowBlock, type RowColumns, readRows } from './log/index.js';
import { logFiles } from './node.js';
import type { ThreadMessage, ThreadTask } from './threadedRows.js';

/** Reads a log and tells its rows. */
async function readAll({ paths, site, plain, slots, slotRows }: ThreadTask, tell: (m: ThreadMessage) => void) {
  let columns: RowColumns = { names: [], signal: [], stated: new Float64Array(0), of: () => undefined };
  let ring = new Float64Array(new SharedArrayBuffer(0));
  const used = new Int32Array(new SharedArrayBuffer(Int32Array.BYTES_PER_ELEMENT));
  let filled = 0;
  let read = 0;
  /** Waits until a slot is free, and gives where it begins. */
  const freeSlot = (): number => {
    for (let done = Atomics.load(used, 0); filled - done >= slots; done = Atomics.load(used, 0)) {
      Atomics.wait(used, 0, done);
    }
    return (filled++ % slots) * slotRows * (columns.names.length + 1);
  };
  const rows = (block: RowBlock): void => {
    for (let row = 0; row < block.count; row += slotRows) {
      const to = Math.min(block.count, row + slotRows);
      const at = freeSlot();
      ring.set(block.time.subarray(row, to), at);
      for (const [c, column] of block.columns.entries()) ring.set(column.subarray(row, to), at + (c + 1) * slotRows);
      tell({ kind: 'rows', count: to - row, read, stated: columns.stated });
    }
  };
  const header = (told: RowColumns): void => {
    columns = told;
    const { names, signal } = told;
    const numbers = slots * slotRows * (names.length + 1);
    ring = new Float64Array(new SharedArrayBuffer(numbers * Float64Array.BYTES_PER_ELEMENT));
    tell({ kind: 'header', names, signal, ring, used });
  };
  const onProgress = (bytes: number) => {
    read = bytes;
  };
  const files = await logFiles(paths);
  const alone = files.map(({ elsewhere: _, ...file }) => file);
  const report = await readRows(alone, site, { header, rows, end() {} }, { plain, onProgress });
  tell({ kind: 'end', read, report });
}

const port = parentPort;
if (port !== null) {
  readAll(workerData as ThreadTask, (message) => port.postMessage(message)).catch((error: unknown) => {
    if (error instanceof UsageError) port.postMessage({ kind: 'refused', what: error.message } satisfies ThreadMessage);
    else port.postMessage({ kind: 'fault', error } satisfies ThreadMessage);
  });
}
