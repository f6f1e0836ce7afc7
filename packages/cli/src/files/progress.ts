import type { LogFile } from 'beamkeep/node';
import type { Options } from 'cli-progress';
import type { Output } from '../io.js';

/** Bytes of input from which a person would wonder whether anything happens. */
const longInput = 4_000_000;

/** Tells a person how far the reading is. */
interface Progress {
  /** So many bytes have been read by now. */
  at(bytes: number): void;
  /** Nothing more is told; the line is left clean. */
  end(): void;
}

const silent: Progress = { at: () => undefined, end: () => undefined };

/**
 * A bar on standard error for long input, on a terminal only; it leaves nothing behind.
 *
 * @param total bytes to be read; undefined where that is not known
 */
async function progress(output: Output, total: number | undefined): Promise<Progress> {
  if (output.isTTY !== true || total === undefined || total < longInput) return silent;
  const settings: Options = {
    format: 'reading [{bar}] {percentage} %, {eta} s left',
    stream: output as NodeJS.WriteStream,
    clearOnComplete: true,
    // Its own handler would swallow an interrupt.
    gracefulExit: false,
    fps: 5,
  };
  const { Presets, SingleBar } = await import('cli-progress');
  const bar = new SingleBar(settings, Presets.legacy);
  bar.start(total, 0);
  return { at: (bytes) => bar.update(Math.min(bytes, total)), end: () => bar.stop() };
}

/** Does some work on logs, with a bar while they are read; the bar is gone when the work ends, well or badly. */
export async function metered<T>(
  size: number | undefined,
  output: Output,
  work: (onProgress: (bytesRead: number) => void) => Promise<T>,
): Promise<T> {
  const { at, end } = await progress(output, size);
  try {
    return await work(at);
  } finally {
    end();
  }
}

/** Bytes to be read from files; undefined where one of them is a stream of unknown length. */
export const sizeOf = (files: readonly LogFile[]): number | undefined =>
  files.reduce<number | undefined>(
    (sum, { size }) => (sum === undefined || size === undefined ? undefined : sum + size),
    0,
  );
