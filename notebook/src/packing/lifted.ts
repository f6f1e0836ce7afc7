/*
 * A sheet file without its logs. Those stand in it as base64, and can be longer than any text that a browser can hold:
 * the file is passed through once, the values of `base64` are left where they are and noted, and what remains is as
 * small as the sheet itself. In its text each of them is replaced by its row.
 */

/** Where in a file a text stands, without its quotes [bytes]; `to` not included. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** A sheet file without its logs. */
export interface Lifted {
  /** JSON, with a row of `stretches` ("0", "1" …) in place of each text of base64. */
  readonly text: string;
  readonly stretches: readonly Stretch[];
}

/** Bytes looked at in one go. */
const atATime = 4 * 1024 * 1024;

/** Most bytes beside the logs: the texts of site files, lists and tests come to far less. */
const mostBeside = 100e6;

const [quote, backslash, colon, comma, opens, closes] = ['"', '\\', ':', ',', '[', ']'].map((sign) =>
  sign.charCodeAt(0),
) as [number, number, number, number, number, number];
const key = [...'base64'].map((letter) => letter.charCodeAt(0));

/**
 * Lifts the logs out of a sheet file.
 *
 * @param file the file; it need not be one, or whole: what remains of it is then no JSON
 * @param tell told how many bytes are passed
 * @throws Error when there is too much beside the logs for a sheet
 */
export async function lifted(file: Blob, tell: (done: number) => void = () => undefined): Promise<Lifted> {
  const kept: (Blob | string)[] = [];
  const stretches: Stretch[] = [];
  let beside = 0;
  /** Where what is kept, or the text that is lifted, begins. */
  let from = 0;
  let within: 'nothing' | 'text' | 'escape' | 'base64' = 'nothing';
  /** The first letters of the text passed last. */
  let word: number[] = [];
  /** Whether texts are to be lifted, and whether several may follow. */
  let lifts = false;
  let list = false;

  const keep = (to: number): void => {
    kept.push(file.slice(from, to));
    beside += to - from;
    if (beside > mostBeside)
      throw new Error(`it holds more than ${mostBeside / 1e6} MB beside its logs: it is no worksheet`);
    from = to;
  };

  for (let start = 0; start < file.size; start += atATime) {
    tell(start);
    const bytes = new Uint8Array(await file.slice(start, start + atATime).arrayBuffer());
    for (let at = 0; at < bytes.length; at++) {
      const byte = bytes[at] as number;
      if (within === 'base64') {
        const end = bytes.indexOf(quote, at);
        if (end < 0) break;
        stretches.push({ from, to: start + end });
        from = start + end;
        within = 'nothing';
        at = end;
      } else if (within === 'escape') within = 'text';
      else if (within === 'text') {
        if (byte === quote) within = 'nothing';
        else if (byte === backslash) within = 'escape';
        if (byte !== quote && word.length <= key.length) word.push(byte);
      } else if (byte === quote && lifts) {
        keep(start + at + 1);
        kept.push(String(stretches.length));
        within = 'base64';
      } else if (byte === quote) {
        word = [];
        within = 'text';
      } else if (byte === colon) lifts = word.length === key.length && key.every((letter, row) => word[row] === letter);
      else if (byte === opens) list = lifts;
      else if (byte === closes || (byte === comma && !list)) lifts = false;
    }
  }
  if (within !== 'base64') keep(file.size);
  tell(file.size);
  return { text: await new Blob(kept).text(), stretches };
}
