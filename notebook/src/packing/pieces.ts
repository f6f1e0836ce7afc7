/*
 * Log files as text and back, in pieces that know nothing of each other: each is gzipped by itself where that is worth
 * while, so several can be worked on at once and none is large.
 */

/** Bytes turned into letters in one go: a multiple of 3, and few enough to be handed over as arguments. */
const bytesAtATime = 3 * 8192;

/** Letters turned into bytes in one go: a multiple of 4. */
const lettersAtATime = 4 * 256 * 1024;

/** A piece of a file as base64. */
export async function packedPiece(piece: Blob, zip: boolean): Promise<Blob> {
  const packed = zip ? await through(piece, new CompressionStream('gzip')) : piece;
  const bytes = new Uint8Array(await packed.arrayBuffer());
  const parts: string[] = [];
  for (let from = 0; from < bytes.length; from += bytesAtATime)
    parts.push(btoa(String.fromCharCode(...bytes.subarray(from, from + bytesAtATime))));
  return new Blob(parts);
}

/**
 * A piece of a file from its base64.
 *
 * @param tell told how many letters more are done
 * @throws when it is damaged
 */
export async function unpackedPiece(letters: Blob, zipped: boolean, tell: (more: number) => void): Promise<Blob> {
  const parts: Blob[] = [];
  for (let from = 0; from < letters.size; from += lettersAtATime) {
    const text = await letters.slice(from, from + lettersAtATime).text();
    parts.push(new Blob([Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0))]));
    tell(text.length);
  }
  const packed = new Blob(parts);
  return zipped ? through(packed, new DecompressionStream('gzip')) : packed;
}

/** Whether to zip a file would gain nothing: gzip, zip, or a reduced log. */
export async function isZipped(file: Blob): Promise<boolean> {
  const start = await file.slice(0, 9).text();
  const [first, second] = new Uint8Array(await file.slice(0, 2).arrayBuffer());
  return start === 'beamkeep-' || (first === 0x1f && second === 0x8b) || start.startsWith('PK');
}

const through = (blob: Blob, turned: CompressionStream | DecompressionStream): Promise<Blob> =>
  new Response(blob.stream().pipeThrough(turned)).blob();
