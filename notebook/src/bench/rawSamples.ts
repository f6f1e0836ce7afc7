import type { Trace } from 'beamkeep/columns';
import { readSamples } from 'beamkeep/log';
import type { Site } from 'beamkeep/site';
import type { LogFile, Window } from './reading.js';

/*
 * The samples of a short window, straight from the file. A trace of a long log keeps quiet minutes as one row each;
 * who looks closer wants the samples themselves. A plain file in order of time is searched by halving, piece by piece,
 * and only the bytes of the window are read. The pieces are read by the library under the file's own header line, so
 * they mean what the whole file means; where a piece alone would not (a zipped file, a level that is scaled by the
 * log's first good stretch), there is nothing to refine and the trace is drawn.
 */

/** Bytes looked at to learn what time it is at a place in the file. */
const probe = 32 * 1024;
/** Most bytes that a window may take. */
const mostBytes = 48 * 1024 * 1024;

/** Samples by beam. */
export type RawSamples = ReadonlyMap<string, Trace>;

/** Finds the samples of windows in one file. */
export interface RawFile {
  /** The samples of a window and some around it; undefined where the file cannot tell. */
  samples(window: Window): Promise<RawSamples | undefined>;
}

/** Whether windows of a log can be read by themselves. */
export const canBeRefined = (site: Site): boolean =>
  site.sampling !== 'on-change' && site.beams.every(({ cleanAir }) => cleanAir !== undefined);

/**
 * Opens a file for looking closer.
 *
 * @param file the log, not zipped
 * @param site the site; see `canBeRefined`
 */
export function rawFile({ name, blob }: LogFile, site: Site): RawFile {
  const head = headerOf(blob);
  let last: { readonly window: Window; readonly samples: Promise<RawSamples | undefined> } | undefined;

  /** Reads whole lines of a piece of the file. */
  async function piece(from: number, to: number): Promise<RawSamples | undefined> {
    const header = await head;
    const bytes = new Uint8Array(await blob.slice(from, to).arrayBuffer());
    const first = from <= header.length ? Math.max(0, header.length - from) : bytes.indexOf(newline) + 1;
    const lines = bytes.subarray(first, bytes.lastIndexOf(newline) + 1);
    if (lines.length === 0) return undefined;
    try {
      const { beams } = await readSamples({ name, bytes: inOrder(header, lines) }, site);
      return new Map(beams.map(({ id, samples: { time, level } }) => [id, traceOf(time, level)]));
    } catch {
      return undefined;
    }
  }

  async function timeAt(place: number): Promise<number> {
    const found = await piece(place, Math.min(blob.size, place + probe));
    const times = [...(found?.values() ?? [])].map(({ time }) => time[0] ?? Number.NaN).filter(Number.isFinite);
    return Math.min(...times);
  }

  /** A place in the file shortly before an instant. */
  async function placeBefore(instant: number): Promise<number> {
    let low = 0;
    let high = blob.size;
    while (high - low > probe) {
      const middle = Math.floor((low + high) / 2);
      const time = await timeAt(middle);
      if (time <= instant) low = middle;
      else high = middle;
    }
    return low;
  }

  async function look({ from, to }: Window): Promise<RawSamples | undefined> {
    const first = await placeBefore(from);
    const end = Math.min(blob.size, (await placeBefore(to)) + 2 * probe);
    return end - first > mostBytes ? undefined : piece(first, end);
  }

  return {
    samples(window) {
      if (last && last.window.from <= window.from && last.window.to >= window.to) return last.samples;
      const length = window.to - window.from;
      const wider = { from: window.from - length / 2, to: window.to + length / 2 };
      last = { window: wider, samples: look(wider) };
      return last.samples;
    },
  };
}

const newline = 0x0a;

/** The header line with its end; empty where there is none within reach. */
async function headerOf(blob: Blob): Promise<Uint8Array> {
  const bytes = new Uint8Array(await blob.slice(0, probe).arrayBuffer());
  return bytes.subarray(0, bytes.indexOf(newline) + 1);
}

/** Two pieces as a stream that can be read again and again. */
function inOrder(...pieces: readonly Uint8Array[]): AsyncIterable<Uint8Array> {
  return {
    async *[Symbol.asyncIterator]() {
      yield* pieces;
    },
  };
}

function traceOf(time: Float64Array, level: Float64Array): Trace {
  const flat = Float32Array.from(level);
  const count = new Uint32Array(time.length).fill(1);
  return { time, until: time, level, low: flat, high: flat, spread: new Float32Array(time.length), count };
}
