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

/** What a note says beside its kind. */
export interface NoteDetail {
  /** The words of the note, where they are not the kind alone. */
  readonly what?: string;
  /** Text found in the log, put in quotes behind the kind. */
  readonly found?: string;
  /** How many lines are concerned, 1 when left out. */
  readonly lines?: number;
}

/** Collects notes; equal ones are counted together, so that their number stays small whatever the log holds. */
export interface NoteBook {
  /**
   * @param file name of the source
   * @param line first line concerned
   * @param kind one of few: what is told when there is too much of it to be told one by one
   */
  note(file: string, line: number, kind: string, detail?: NoteDetail): void;
  /** @param files how many sources the log has: a note names its file when there are several */
  list(files: number): InputNote[];
}

/** An empty book of notes. */
export function noteBook(): NoteBook {
  const kinds = new Map<string, Map<string, OpenNote>>();
  return {
    note(file, line, kind, { what = kind, found, lines = 1 } = {}) {
      const key = `${file}\n${kind}`;
      const notes = kinds.get(key) ?? new Map<string, OpenNote>();
      kinds.set(key, notes);
      let words = found === undefined ? what : `${what}: ${quoted(found)}`;
      if (!notes.has(words) && notes.size >= notesOfAKind) words = `${kind}: others`;
      const known = notes.get(words);
      if (known === undefined) notes.set(words, { line, lines, what: words, file });
      else {
        known.lines += lines;
        known.line = Math.min(known.line, line);
      }
    },
    list(files) {
      const all = [...kinds.values()].flatMap((notes) => [...notes.values()]);
      const order = [...new Set(all.map(({ file }) => file))];
      all.sort((a, b) => order.indexOf(a.file) - order.indexOf(b.file) || a.line - b.line);
      return all.map(({ line, lines, what, file }) =>
        files > 1 ? { line, lines, what, file } : { line, lines, what },
      );
    },
  };
}
