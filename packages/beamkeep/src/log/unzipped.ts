import { FlateErrorCode, Gunzip as Unzip } from 'fflate';
import type { LogSource } from './logSource.js';

/** Zipped bytes given to the unzipper at once: a thousandfold bomb then makes a few MiB at a time, not all of them. */
const slice = 4096;

/** What is told of a gzip stream that is damaged or cut short. */
export const damagedGzip = 'the gzip data is damaged or cut short: what came before was read';
/** What is told of bytes behind the last gzip member. */
export const trailingBytes = 'bytes after the gzip data are not gzip: left out';

/** The bytes of a source, unzipped where the first two say that they are gzip (RFC 1952, 2.3.1), whatever its name. */
export async function* unzipped(
  bytes: AsyncIterable<Uint8Array>,
  { gunzip = unzippedMembers }: Pick<LogSource, 'gunzip'>,
  onDamage: (what: string) => void,
): AsyncGenerator<Uint8Array> {
  const chunks = bytes[Symbol.asyncIterator]();
  try {
    const head: number[] = [];
    let rest: Uint8Array = new Uint8Array(0);
    while (head.length < 2) {
      const { done, value } = await chunks.next();
      if (done) break;
      const taken = Math.min(2 - head.length, value.length);
      head.push(...value.subarray(0, taken));
      rest = value.subarray(taken);
    }
    const whole = withHead(Uint8Array.from(head), rest, chunks);
    yield* head[0] === 0x1f && head[1] === 0x8b ? gunzip(whole, onDamage) : whole;
  } finally {
    await chunks.return?.();
  }
}

async function* withHead(
  head: Uint8Array,
  rest: Uint8Array,
  chunks: AsyncIterator<Uint8Array>,
): AsyncGenerator<Uint8Array> {
  yield head;
  yield rest;
  for (;;) {
    const { done, value } = await chunks.next();
    if (done) return;
    yield value;
  }
}

/** Unzips gzip members in a row. What follows a damaged place is left out, and told. */
async function* unzippedMembers(
  bytes: AsyncIterable<Uint8Array>,
  onDamage: (what: string) => void,
): AsyncGenerator<Uint8Array> {
  let ready: Uint8Array[] = [];
  const unzip = new Unzip((chunk) => {
    if (chunk.length > 0) ready.push(chunk);
  });
  const take = () => {
    const taken = ready;
    ready = [];
    return taken;
  };
  try {
    for await (const chunk of bytes) {
      for (let from = 0; from < chunk.length; from += slice) {
        unzip.push(chunk.slice(from, from + slice));
        yield* take();
      }
    }
    unzip.push(new Uint8Array(0), true);
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && typeof error.code === 'number')) throw error;
    yield* take();
    onDamage(error.code === FlateErrorCode.InvalidHeader ? trailingBytes : damagedGzip);
  }
  yield* take();
}
