/** Bytes fetched at once. */
const blockBytes = 1 << 20;

/**
 * The bytes of a file, from its start each time they are asked for; a chunk is good until the next one is asked for.
 * They come into one buffer again and again where the browser's files can be read so: fresh memory for every chunk costs
 * more than reading a long log does.
 */
export function bytesOf(blob: Blob): AsyncIterable<Uint8Array> {
  return {
    [Symbol.asyncIterator]() {
      const reader = intoOneBuffer(blob);
      return reader ? refilled(reader) : fresh(blob.stream().getReader());
    },
  };
}

/** Undefined where files are no streams of bytes. */
function intoOneBuffer(blob: Blob): ReadableStreamBYOBReader | undefined {
  try {
    return blob.stream().getReader({ mode: 'byob' });
  } catch {
    return undefined;
  }
}

/**
 * What is being read. Chromium clears away a reader of this kind that nothing but its own read under way leads to, and
 * that read then never ends.
 */
const underWay = new Set<ReadableStreamBYOBReader>();

async function* refilled(reader: ReadableStreamBYOBReader): AsyncGenerator<Uint8Array> {
  let block = new Uint8Array(blockBytes);
  underWay.add(reader);
  try {
    for (;;) {
      const { done, value } = await reader.read(block);
      if (done) return;
      yield value;
      block = new Uint8Array(value.buffer);
    }
  } finally {
    underWay.delete(reader);
    await reader.cancel();
  }
}

async function* fresh(reader: ReadableStreamDefaultReader<Uint8Array>): AsyncGenerator<Uint8Array> {
  try {
    for (;;) {
      const { done, value } = await reader.read();
      if (done) return;
      yield value;
    }
  } finally {
    await reader.cancel();
  }
}
