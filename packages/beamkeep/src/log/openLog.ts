import { type LogHead, logHead } from './head.js';
import type { NoteBook } from './inputNotes.js';
import type { LogSource } from './logSource.js';
import { unzipped } from './unzipped.js';

/** Most bytes that are looked at to learn how a log is written. */
const headBytes = 1 << 18;

/** A log whose beginning is known. */
export interface OpenLog {
  readonly head: LogHead;
  /** The bytes after the header; asked for once. */
  data(): AsyncIterable<Uint8Array>;
  close(): Promise<void>;
}

/** Counts bytes as they are read, and stops where reading was cancelled. */
export type Watch = (bytes: AsyncIterable<Uint8Array>) => AsyncIterable<Uint8Array>;

/**
 * Opens a log and reads its beginning.
 *
 * @param oneOfMany a log that can be read again is then closed until its turn comes
 */
export async function openLog(source: LogSource, watch: Watch, notes: NoteBook, oneOfMany: boolean): Promise<OpenLog> {
  let damage: string | undefined;
  const start = (watched: Watch) =>
    unzipped(watched(source.bytes), source, (what) => {
      damage = what;
    });
  const canRestart = oneOfMany && source.bytes[Symbol.asyncIterator]() !== (source.bytes as unknown);
  let chunks = start(canRestart ? (bytes) => bytes : watch)[Symbol.asyncIterator]();
  let bytes = new Uint8Array(0);
  let whole = false;
  while (bytes.length < headBytes) {
    const { done, value } = await chunks.next();
    if (done) {
      whole = true;
      break;
    }
    const longer = new Uint8Array(bytes.length + value.length);
    longer.set(bytes);
    longer.set(value, bytes.length);
    bytes = longer;
  }
  const head = logHead(source.name, bytes, whole);
  if (canRestart) {
    await chunks.return?.(undefined);
    bytes = new Uint8Array(0);
    damage = undefined;
  }
  async function* data(): AsyncGenerator<Uint8Array> {
    let skip = head.dataFrom;
    if (canRestart) chunks = start(watch)[Symbol.asyncIterator]();
    else {
      yield bytes.subarray(skip);
      bytes = new Uint8Array(0);
      skip = 0;
    }
    for (;;) {
      const { done, value } = await chunks.next();
      if (done) break;
      if (skip >= value.length) skip -= value.length;
      else {
        yield skip > 0 ? value.subarray(skip) : value;
        skip = 0;
      }
    }
  }
  return {
    head,
    async *data() {
      yield* data();
      if (damage !== undefined) notes.note(source.name, 0, damage);
    },
    async close() {
      await chunks.return?.(undefined);
    },
  };
}
