import { strToU8 } from 'fflate';
import type { Site } from '../site/index.js';
import type { InputReport } from './inputNotes.js';
import type { RowSink } from './rowBlock.js';

/** A file, a stream or a text that holds a log, or a part of one. */
export interface LogSource {
  /** What messages call it: the file's name. */
  readonly name: string;
  /**
   * The bytes, in chunks of any size, plain or gzipped. A chunk is used up before the next one is asked for, so one
   * buffer may serve for all.
   */
  readonly bytes: AsyncIterable<Uint8Array>;
  /**
   * True: `bytes` begins anew each time it is iterated. Where several sources make one log, each is looked into first
   * and read later; one that can begin anew is not kept open meanwhile.
   */
  readonly restarts?: boolean;
  /** A quicker way to unzip, where the surroundings have one; it must read several members in a row. */
  readonly gunzip?: Gunzip;
  /** How long the source is, as it is stored [bytes]; left out or undefined where that is not known. */
  readonly size?: number | undefined;
  /** Another way to read rows, where the surroundings have one. All sources of a log must name the same. */
  readonly elsewhere?: RowReader;
}

/**
 * Reads the rows of sources as `readRows` does, elsewhere: on a thread, say.
 *
 * @returns the report; undefined where it declines, and nothing has been read
 */
export type RowReader = (
  sources: readonly LogSource[],
  site: Site,
  sink: RowSink,
  options: ReadOptions,
) => Promise<InputReport> | undefined;

/** Unzips a stream; told `onDamage` where it ends too soon or is damaged, after all that could be read. */
export type Gunzip = (bytes: AsyncIterable<Uint8Array>, onDamage: (what: string) => void) => AsyncIterable<Uint8Array>;

/** One source, or several that are one log. */
export type LogSources = LogSource | readonly LogSource[];

/** What may be asked of a reader. */
export interface ReadOptions {
  /** Told how many bytes of the sources (as stored, so gzipped ones by their zipped size) have been read so far. */
  readonly onProgress?: ((bytesRead: number) => void) | undefined;
  /** Looked at between chunks; reading then ends with an error named `AbortError`. */
  readonly signal?: { readonly aborted: boolean } | undefined;
  /** False: every line goes the general way, cell by cell as text. The result is the same; it serves to test that. */
  readonly plain?: boolean | undefined;
}

/** A text as a source, for tests and for logs that are made in memory. */
export function logOfText(text: string, name = 'log.csv'): LogSource {
  return { name, bytes: oneChunk(strToU8(text)), restarts: true };
}

/** Bytes at hand as a stream that can be read again and again. */
function oneChunk(bytes: Uint8Array): AsyncIterable<Uint8Array> {
  return {
    async *[Symbol.asyncIterator]() {
      yield bytes;
    },
  };
}
