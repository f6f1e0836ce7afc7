import { quoted } from '../site/index.js';

/** What was mended, dropped or worked out while a log was read. */
export interface InputNote {
  /** First line concerned, the header being line 1. */
  readonly line: number;
  /** Number of lines concerned. */
  readonly lines: number;
  readonly what: string;
  /** The file's name, where the log is several files. */
  readonly file?: string;
}

/** What a log was found to be: told in every output. */
export interface InputReport {
  /** Lines read, headers included. */
  readonly lines: number;
  /** Lines that gave no sample: broken, doubled, empty or too late to be put in order. */
  readonly dropped: number;
  readonly notes: readonly InputNote[];
}

/** Most notes of one kind that are told one by one; the rest of the kind is counted in one more. */
const notesOfAKind = 8;

interface OpenNote {
  line: number;
  lines: number;
  readonly what: string;
  readonly file: string;
}

/** Collects notes; equal ones are counted together, so that their number stays small whatever the log holds. */
export interface NoteBook {
  /**
   * @param file name of the source
   * @param line first line concerned
   * @param kind what it is about, without the particulars: what is told when there are too many of it
   * @param found the text found, when it belongs to the note
   * @param lines how many lines are concerned
   */
  note(file: string, line: number, kind: string, found?: string, lines?: number): void;
  /** @param files how many sources the log has: a note names its file when there are several */
  list(files: number): InputNote[];
}

/** An empty book of notes. */
export function noteBook(): NoteBook {
  const kinds = new Map<string, Map<string, OpenNote>>();
  return {
    note(file, line, kind, found, lines = 1) {
      const key = `${file}\n${kind}`;
      let notes = kinds.get(key);
      if (notes === undefined) {
        notes = new Map();
        kinds.set(key, notes);
      }
      let what = found === undefined ? kind : `${kind}: ${quoted(found)}`;
      if (!notes.has(what) && notes.size >= notesOfAKind) what = `${kind}: others`;
      const known = notes.get(what);
      if (known === undefined) notes.set(what, { line, lines, what, file });
      else {
        known.lines += lines;
        if (line < known.line) known.line = line;
      }
    },
    list(files) {
      const all = [...kinds.values()].flatMap((notes) => [...notes.values()]);
      const order = new Map([...new Set(all.map(({ file }) => file))].map((file, at) => [file, at]));
      all.sort((a, b) => (order.get(a.file) ?? 0) - (order.get(b.file) ?? 0) || a.line - b.line);
      return all.map(({ line, lines, what, file }) =>
        files > 1 ? { line, lines, what, file } : { line, lines, what },
      );
    },
  };
}
