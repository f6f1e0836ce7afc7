import type { CauseWord } from 'beamkeep/diagnosis';
import { causeHeading, withHeadings } from '../../words/causes.js';

/** A cause at the time asked about, and on how many of the days it says most. */
interface CauseThen {
  readonly cause: CauseWord;
  readonly days: number;
}

/** One piece of the short answer. */
export interface Answered {
  readonly cause: string;
  /** "at this hour on 14 days", and what smoke asks for; empty where there is nothing to add. */
  readonly rest: string;
}

/**
 * The short answer, in order: which causes, on how many of the days. What cannot be told from smoke says what it asks
 * for, wherever it stands.
 *
 * @param causes the most usual first
 * @param many whether many days were asked about, not one moment
 */
export function headline(causes: readonly CauseThen[], many: boolean): Answered[] {
  return causes.map(({ cause, days }) => ({
    cause: causeHeading(cause),
    rest: [
      many ? `at this hour on ${days} ${days === 1 ? 'day' : 'days'}` : '',
      cause === 'smoke-like' ? (many && days > 1 ? ': treat each as fire' : ': treat as fire') : '',
    ].join(''),
  }));
}

/** Library sentences name a cause by its word in the files; here it has a name of this sheet before its share and after "for". */
export const inNames = (sentence: string, causes: readonly { readonly cause: CauseWord }[]): string =>
  causes.reduce(
    (words, { cause }) => words.replace(`Then, for ${cause}:`, `Then, for ${causeHeading(cause).toLowerCase()}:`),
    withHeadings(sentence),
  );
