/*
 * Reading a log on a thread of its own: there bytes become rows, here rows become whatever the sink makes of them, both
 * at once. Rows pass through a ring of shared memory and are not copied again; what decides the answer is the same code
 * in the same order, so that it is the same to the last bit.
 *
 *     thread   bytes -> rows -> | slot 0 | slot 1 | … |        stands still while every slot is full
 *     here                      | slot 0 | slot 1 | … | -> sink
 */
import { existsSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { Worker } from 'node:worker_threads';
import { UsageError } from './columns/index.js';
import { type InputReport, type ReadOptions, type RowReader, type RowSink, readRows } from './log/index.js';
import type { Site } from './site/index.js';

/** How the thread is used; a test may use another one. */
export interface ThreadSettings {
  /** File of the thread's program. */
  readonly program: URL;
  /** Logs of fewer bytes are not worth a thread. */
  readonly leastBytes: number;
  /** Rows of a slot. */
  readonly slotRows: number;
}

/** Slots of the ring. */
const slots = 8;

/** What the thread is told. */
export interface ThreadTask {
  readonly paths: readonly string[];
  readonly site: Site;
  readonly plain: boolean;
  readonly slots: number;
  readonly slotRows: number;
}

/** What the thread tells. */
export type ThreadMessage =
  | {
      readonly kind: 'header';
      readonly names: readonly string[];
      readonly signal: readonly number[];
      /** The ring: for each slot its times, then its columns. */
      readonly ring: Float64Array<SharedArrayBuffer>;
      /** How many slots have been used up here. */
      readonly used: Int32Array<SharedArrayBuffer>;
    }
  | { readonly kind: 'rows'; readonly count: number; readonly read: number; readonly stated: Float64Array<ArrayBuffer> }
  | { readonly kind: 'end'; readonly read: number; readonly report: InputReport }
  | { readonly kind: 'refused'; readonly what: string }
  | { readonly kind: 'fault'; readonly error: unknown };

/** The thread's program beside this file, in the package as it is published. */
function ownProgram(): URL {
  const here: string | undefined = import.meta.url;
  return new URL('./rowsThread.js', here ?? pathToFileURL(__filename));
}

const usual = (): ThreadSettings => ({ program: ownProgram(), leastBytes: 1 << 24, slotRows: 1 << 14 });

/**
 * A reader of files, known by their paths, that uses a thread where one can be had and is worth it. It declines where the
 * machine has one core only, for short logs and for streams.
 */
export function threadedRows(settings: Partial<ThreadSettings> = {}): RowReader {
  const { program, leastBytes, slotRows } = { ...usual(), ...settings };
  return (sources, site, sink, options) => {
    const bytes = sources.reduce((sum, { size }) => sum + (size ?? Number.NaN), 0);
    if (!(bytes >= leastBytes) || availableParallelism() < 2 || !existsSync(fileURLToPath(program))) return undefined;
    const paths = sources.map(({ name }) => name);
    const task: ThreadTask = { paths, site, plain: options.plain ?? true, slots, slotRows };
    return rowsOf(new Worker(program, { workerData: task }), slotRows, sink, options).catch((error: unknown) => {
      if (!(error instanceof NoThread)) throw error;
      const alone = sources.map(({ elsewhere: _, ...file }) => file);
      return readRows(alone, site, sink, options);
    });
  };
}

/** The thread could not begin: nothing has been read. */
class NoThread extends Error {}

function rowsOf(thread: Worker, slotRows: number, sink: RowSink, options: ReadOptions): Promise<InputReport> {
  const { onProgress, signal } = options;
  let header: (ThreadMessage & { kind: 'header' }) | undefined;
  let stated: Float64Array<ArrayBuffer> = new Float64Array(0);
  let taken = 0;
  const take = (message: ThreadMessage): InputReport | undefined => {
    if (signal?.aborted) throw Object.assign(new Error('reading was cancelled'), { name: 'AbortError' });
    if (message.kind === 'refused') throw new UsageError(message.what);
    if (message.kind === 'fault') throw message.error;
    if (message.kind === 'header') {
      header = message;
      const { names, signal } = message;
      stated = new Float64Array(names.length);
      const of = (name: string | undefined) => {
        const at = name === undefined ? -1 : names.indexOf(name);
        return at < 0 ? undefined : at;
      };
      sink.header({ names, signal, stated, of });
      return undefined;
    }
    if (message.kind === 'rows' && header !== undefined) {
      const { ring, used, names } = header;
      const { count } = message;
      const from = (taken++ % slots) * slotRows * (names.length + 1);
      const column = (at: number) => ring.subarray(from + at * slotRows, from + at * slotRows + count);
      stated.set(message.stated);
      // Shared memory that nobody writes to until it is given back.
      sink.rows({
        time: column(0) as Float64Array,
        columns: names.map((_, at) => column(at + 1) as Float64Array),
        count,
      });
      Atomics.store(used, 0, taken);
      Atomics.notify(used, 0);
    }
    onProgress?.('read' in message ? message.read : 0);
    if (message.kind !== 'end') return undefined;
    sink.end();
    return message.report;
  };
  return new Promise<InputReport>((resolve, reject) => {
    thread.on('message', (message: ThreadMessage) => {
      try {
        const report = take(message);
        if (report !== undefined) resolve(report);
      } catch (error) {
        reject(error);
      }
    });
    const lost = (why: unknown) => reject(header === undefined ? new NoThread() : why);
    thread.once('error', lost);
    thread.once('exit', () => lost(new Error('the reading thread ended')));
  }).finally(() => thread.terminate());
}
