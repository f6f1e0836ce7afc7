/*
 * Where the library's numbers come from. A constant of the outside world is never a bare literal: it is an entry of
 * this room, and an entry says its unit, its source and how far the source can be trusted. Leave the source out, or
 * write a single word there, and the entry does not compile.
 *
 *     read             seen in a text at hand, often an excerpt; clause and edition where the excerpt shows them
 *     from memory      believed to stand in the source named, not seen again: check before it is shown as fact
 *     derived          follows from definitions or from other entries; `source` says from what
 *     common practice  a habit of the trade; nobody to ask
 *     own choice       beamkeep's own; `source` gives the reason
 *
 * To add one: a constant in the file of its topic, `satisfies Sourced`. Write plain literals, no spread, no sum, no call
 * and no other entry's `.value`: only then can a bundler leave the entry out where nobody uses it. A new topic is a file here, a line in the
 * index and one in `collected.ts`; then write docs/numbers.md anew (scripts/writeNumbersPage.mjs).
 */

/** Two words at least: a place that a reader can look up, not an empty string. */
export type Source = `${string} ${string}`;

/** What an entry says about its number, whoever stands behind it. */
interface Figure {
  readonly value: number;
  /** Uncertainty as the source states it, plus and minus, in `unit`. */
  readonly spread?: number;
  /** What sources or cases span where they differ, in `unit`. */
  readonly range?: readonly [low: number, high: number];
  readonly unit: string;
  /** What a careful reader has to know before using it. */
  readonly note?: string;
}

/** A number that can be looked up. */
interface Cited extends Figure {
  readonly seen: 'read' | 'from memory';
  readonly source: Source;
  readonly clause?: string;
  readonly edition?: string;
}

/** A number that can be worked out again, or that this library decided. */
interface Reasoned extends Figure {
  readonly seen: 'derived' | 'own choice';
  readonly source: Source;
}

/** A number that everybody uses and nobody can trace. */
interface Habit extends Figure {
  readonly seen: 'common practice';
  readonly source: 'common practice, no source';
}

/** One constant, with where it comes from. */
export type Sourced = Cited | Reasoned | Habit;

/** Entries by name, nested where names repeat (a rule set, a fuel). */
export interface Topic {
  readonly [name: string]: Sourced | Topic;
}
