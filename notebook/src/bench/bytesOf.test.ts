import { describe, expect, it } from 'vitest';
import { bytesOf } from './bytesOf.js';

const bytes = Uint8Array.from({ length: 3_000_000 }, (_, at) => at % 251);

/** A file of a browser whose files are no streams of bytes. */
const older = (blob: Blob): Blob =>
  Object.assign(blob, {
    stream: () =>
      new ReadableStream({
        start(controller) {
          controller.enqueue(bytes.slice(0, 1_000_000));
          controller.enqueue(bytes.slice(1_000_000));
          controller.close();
        },
      }),
  });

async function read(blob: Blob): Promise<Uint8Array> {
  const all: number[] = [];
  for await (const chunk of bytesOf(blob)) for (const byte of chunk) all.push(byte);
  return Uint8Array.from(all);
}

describe('bytesOf', () => {
  it.each([
    ['into one buffer', new Blob([bytes])],
    ['in fresh chunks', older(new Blob([bytes]))],
  ])('the file, again and again, %s', async (_, blob) => {
    for (const chunks of [await read(blob), await read(blob)]) expect(Buffer.compare(chunks, bytes)).toBe(0);
  });
  it('an empty file', async () => expect(await read(new Blob([]))).toHaveLength(0));
  it('can be left half-way', async () => {
    for await (const chunk of bytesOf(new Blob([bytes]))) {
      expect(chunk[0]).toBe(0);
      break;
    }
  });
});
