import { UsageError } from 'beamkeep/columns';
import { type InputReport, type ReadOptions, type RowReader, type RowSink, readRows } from 'beamkeep/log';
import type { Site } from 'beamkeep/site';
import type { LogFile } from './reading.js';

/*
 * Long logs are read by two workers at once: one turns bytes into rows (rowsWorker.ts), the bench makes of the rows what
 * it was asked for. What decides the answer is the same code in the same order as where one does both.
 */

/** What the worker is told. */
export interface RowsTask {
  readonly files: readonly LogFile[];
  readonly site: Site;
  readonly plain: boolean;
}

/** What the worker tells. */
export type RowsMessage =
  | { readonly kind: 'header'; readonly names: readonly string[]; readonly signal: readonly number[] }
  | {
      readonly kind: 'rows';
      /** The times, then each column; to be given back. */
      readonly buffer: ArrayBuffer;
      readonly count: number;
      /** Read so far. */
      readonly bytes: number;
      readonly stated: Float64Array<ArrayBuffer>;
    }
  | { readonly kind: 'end'; readonly report: InputReport }
  | { readonly kind: 'refused'; readonly what: string }
  | { readonly kind: 'fault'; readonly error: unknown };

/** Logs of fewer bytes are not worth a worker. */
const leastBytes = 1 << 24;

/** The worker could not begin: nothing has been read. */
class NoWorker extends Error {}

/** A reader of these files that uses a second worker where one can be had and is worth it. */
export function rowsAside(files: readonly LogFile[]): RowReader {
  return (sources, site, sink, options) => {
    const bytes = files.reduce((sum, { blob }) => sum + blob.size, 0);
    if (bytes < leastBytes || !(navigator.hardwareConcurrency > 1) || typeof Worker === 'undefined') return undefined;
    const worker = new Worker(new URL('./rowsWorker.ts', import.meta.url), { type: 'module', name: 'beamkeep rows' });
    const task: RowsTask = { files, site, plain: options.plain ?? true };
    return rowsOf(worker, task, sink, options).catch((error: unknown) => {
      if (!(error instanceof NoWorker)) throw error;
      const alone = sources.map(({ elsewhere: _, ...source }) => source);
      return readRows(alone, site, sink, options);
    });
  };
}

function rowsOf(worker: Worker, task: RowsTask, sink: RowSink, options: ReadOptions): Promise<InputReport> {
  let stated: Float64Array<ArrayBuffer> | undefined;
  const take = (message: RowsMessage): InputReport | undefined => {
    if (options.signal?.aborted) throw Object.assign(new Error('reading was cancelled'), { name: 'AbortError' });
    if (message.kind === 'refused') throw new UsageError(message.what);
    if (message.kind === 'fault') throw message.error;
    if (message.kind === 'header') {
      const { names, signal } = message;
      const of = (name: string | undefined): number | undefined => {
        const at = name === undefined ? -1 : names.indexOf(name);
        return at < 0 ? undefined : at;
      };
      stated = new Float64Array(names.length);
      sink.header({ names, signal, stated, of });
    }
    if (message.kind === 'rows' && stated) {
      const { buffer, count, bytes } = message;
      stated.set(message.stated);
      const column = (at: number) => new Float64Array(buffer, at * count * Float64Array.BYTES_PER_ELEMENT, count);
      sink.rows({ time: column(0), columns: Array.from(stated, (_, at) => column(at + 1)), count });
      worker.postMessage(buffer, [buffer]);
      options.onProgress?.(bytes);
    }
    if (message.kind !== 'end') return undefined;
    sink.end();
    return message.report;
  };
  return new Promise<InputReport>((resolve, reject) => {
    worker.onmessage = ({ data }: MessageEvent<RowsMessage>) => {
      try {
        const report = take(data);
        if (report) resolve(report);
      } catch (error) {
        reject(error);
      }
    };
    worker.onerror = ({ message }) => reject(stated ? new Error(message) : new NoWorker());
    worker.postMessage(task);
  }).finally(() => worker.terminate());
}
