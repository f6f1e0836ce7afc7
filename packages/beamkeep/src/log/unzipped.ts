import { FlateErrorCode, Gunzip as Unzip } from 'fflate';
import { crc32 } from './crc32.js';
import type { LogSource } from './logSource.js';

/** Zipped bytes given to the unzipper at once: a thousandfold bomb then makes a few MiB at a time, not all of them. */
const slice = 4096;
/** Length of what stands behind the data of a gzip member: its checksum and its length (RFC 1952, 2.3.1). */
const trailerBytes = 8;
/** Zipped bytes that are kept so that a trailer is still at hand when the header behind it has been read. */
const keptBytes = 2048;

/** What is told of a gzip stream that is damaged or cut short. */
export const damagedGzip = 'the gzip data is damaged or cut short: what came before was read';
/** What is told of bytes behind the last gzip member. */
const trailingBytes = 'bytes after the gzip data are not gzip: left out';

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
  const members = new MemberChecks();
  const unzip = new Unzip((chunk) => {
    members.unzipped(chunk);
    if (chunk.length > 0) ready.push(chunk);
  });
  unzip.onmember = (offset) => members.next(offset);
  const take = () => {
    const taken = ready;
    ready = [];
    return taken;
  };
  try {
    for await (const chunk of bytes) {
      for (let from = 0; from < chunk.length; from += slice) {
        const zipped = chunk.slice(from, from + slice);
        members.zipped(zipped);
        unzip.push(zipped);
        yield* take();
      }
    }
    unzip.push(new Uint8Array(0), true);
    members.next(members.bytes);
    if (!members.whole) onDamage(damagedGzip);
  } catch (error) {
    if (!(error instanceof Error && 'code' in error && typeof error.code === 'number')) throw error;
    yield* take();
    onDamage(error.code === FlateErrorCode.InvalidHeader ? trailingBytes : damagedGzip);
  }
  yield* take();
}

/** Compares each member with the checksum and the length that stand behind it: the unzipper itself does not. */
class MemberChecks {
  /** Zipped bytes so far. */
  bytes = 0;
  /** Whether all members that have ended were whole. */
  whole = true;
  private crc = 0;
  private length = 0;
  /** The last zipped bytes: a slice, and some before it. */
  private last: Uint8Array = new Uint8Array(0);

  zipped(bytes: Uint8Array): void {
    const kept = this.last.subarray(-keptBytes);
    const last = new Uint8Array(kept.length + bytes.length);
    last.set(kept);
    last.set(bytes, kept.length);
    this.last = last;
    this.bytes += bytes.length;
  }

  unzipped(bytes: Uint8Array): void {
    this.crc = crc32(bytes, this.crc);
    this.length = (this.length + bytes.length) >>> 0;
  }

  /** A member has ended: `offset` zipped bytes from the beginning the next one starts. */
  next(offset: number): void {
    const end = this.last.length - (this.bytes - offset);
    const trailer = this.last.subarray(Math.max(0, end - trailerBytes), Math.max(0, end));
    const said = new DataView(trailer.buffer, trailer.byteOffset, trailer.length);
    this.whole &&=
      trailer.length === trailerBytes &&
      said.getUint32(0, true) === this.crc &&
      said.getUint32(4, true) === this.length;
    this.crc = 0;
    this.length = 0;
  }
}
