import { UsageError } from 'beamkeep/columns';
import { type RowBlock, type RowColumns, readRows } from 'beamkeep/log';
import { bytesOf } from './bytesOf.js';
import type { RowsMessage, RowsTask } from './rowsAside.js';

/*
 * The program of the worker that turns the bytes of a log into rows (rowsAside.ts). A block of rows travels in a buffer
 * that comes back when it has been used up; bytes are taken on only while not all of the buffers are on their way.
 */

/** Buffers on their way at once. */
const mostBuffers = 8;
/** Zipped bytes taken on at once: what a thousandfold bomb makes of them is still little. */
const zippedBytes = 1 << 14;

const free: ArrayBuffer[] = [];
let onTheWay = 0;
let goOn = (): void => {};

const tell = (message: RowsMessage, given: Transferable[] = []): void => postMessage(message, { transfer: given });

/** The bytes of a file, each piece when the rows of those before it are asked for. */
async function* asAsked(blob: Blob): AsyncGenerator<Uint8Array> {
  const [first, second] = new Uint8Array(await blob.slice(0, 2).arrayBuffer());
  const most = first === 0x1f && second === 0x8b ? zippedBytes : Number.POSITIVE_INFINITY;
  for await (const chunk of bytesOf(blob))
    for (let from = 0; from < chunk.length; from += most) {
      while (onTheWay >= mostBuffers)
        await new Promise<void>((resolve) => {
          goOn = resolve;
        });
      yield chunk.subarray(from, from + most);
    }
}

/** A buffer for so many numbers. */
function bufferFor(numbers: number): ArrayBuffer {
  const bytes = numbers * Float64Array.BYTES_PER_ELEMENT;
  const used = free.pop();
  return used && used.byteLength >= bytes ? used : new ArrayBuffer(bytes);
}

async function read({ files, site, plain }: RowsTask): Promise<void> {
  let bytes = 0;
  let columns: RowColumns | undefined;
  const sink = {
    header(told: RowColumns): void {
      columns = told;
      tell({ kind: 'header', names: told.names, signal: told.signal });
    },
    rows({ time, columns: readings, count }: RowBlock): void {
      const buffer = bufferFor((readings.length + 1) * count);
      for (const [at, column] of [time, ...readings].entries())
        new Float64Array(buffer, at * count * Float64Array.BYTES_PER_ELEMENT, count).set(column.subarray(0, count));
      onTheWay++;
      tell({ kind: 'rows', buffer, count, bytes, stated: columns?.stated ?? new Float64Array(0) }, [buffer]);
    },
    end(): void {},
  };
  const sources = files.map(({ name, blob }) => ({ name, bytes: asAsked(blob) }));
  const onProgress = (done: number): void => {
    bytes = done;
  };
  tell({ kind: 'end', report: await readRows(sources, site, sink, { plain, onProgress }) });
}

addEventListener('message', ({ data }: MessageEvent<RowsTask | ArrayBuffer>) => {
  if (data instanceof ArrayBuffer) {
    free.push(data);
    onTheWay--;
    goOn();
    return;
  }
  read(data).catch((error: unknown) => {
    tell(error instanceof UsageError ? { kind: 'refused', what: error.message } : { kind: 'fault', error });
  });
});
