import { UsageError } from 'beamkeep';

/** A line of text, and whether its line feed was there: the last line of a file that was cut short has none. */
export interface TextLine {
  readonly text: string;
  readonly whole: boolean;
}

/**
 * The lines of a stream, without their line feeds. Only a line feed ends a line: names and JSON may hold every other
 * sign.
 *
 * @param name of the stream, for errors
 * @param longest bytes that are held of one line
 * @throws UsageError for a longer line
 */
export async function* textLines(
  stream: AsyncIterable<Uint8Array>,
  name: string,
  longest: number,
): AsyncGenerator<TextLine> {
  let held: Uint8Array[] = [];
  let size = 0;
  const taken = (whole: boolean): TextLine => {
    const text = Buffer.concat(held).toString();
    held = [];
    size = 0;
    return { text, whole };
  };
  for await (const block of stream) {
    let from = 0;
    for (let at = block.indexOf(10); at >= 0; at = block.indexOf(10, from)) {
      held.push(block.subarray(from, at));
      yield taken(true);
      from = at + 1;
    }
    if (from === block.length) continue;
    held.push(block.slice(from));
    size += block.length - from;
    if (size > longest)
      throw new UsageError(`${name}: a line of more than ${longest / 1e6} MB: this is no list of lines`);
  }
  if (size > 0) yield taken(false);
}
