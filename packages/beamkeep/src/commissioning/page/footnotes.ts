import { type BasisKey, bases } from '../record/bases.js';
import type { BasisOut } from '../record/commissioningRecord.js';
import { type Content, html, type Markup } from './markup.js';

/*
 * Every number of the page leads to its formula and source: pointed at, it says them; printed, a small figure in brackets
 * leads to the note at the end: without them that of a length would be read as its power. Notes are numbered as they are met.
 */

/** Writes numbers with their notes, and the notes at the end. */
export interface Footnotes {
  /** A number, or a text with numbers in it, and where it comes from. */
  number(content: Content, key: BasisKey): Markup;
  /** The figures alone that lead to notes, for a heading whose sentences hold numbers. */
  references(...keys: readonly BasisKey[]): Markup;
  /** The notes that were met, in order. */
  list(): Markup;
}

const seenWords: Readonly<Record<BasisOut['seen'], string>> = {
  read: 'read in a text at hand',
  'from memory': 'from memory: look it up before you rely on it',
  derived: 'derived',
  'common practice': 'common practice, no source',
  'own choice': "beamkeep's own choice",
  'as given': 'as given',
};

/** Notes of one page. */
export function footnotes(): Footnotes {
  const met: BasisKey[] = [];
  const numberOf = (key: BasisKey): number => {
    if (!met.includes(key)) met.push(key);
    return met.indexOf(key) + 1;
  };
  const reference = (key: BasisKey): Markup => {
    const at = numberOf(key);
    return html`<sup class="note"><a href="#note-${at}">[${at}]</a></sup>`;
  };
  return {
    references: (...keys) => html`${keys.map((key, at) => [at > 0 && ' ', reference(key)])}`,
    number(content, key) {
      const { says, formula, source } = bases[key];
      return html`<span class="noted"><span class="number" title="${says}: ${formula}. ${source}">${content}</span>${reference(key)}</span>`;
    },
    list: () => html`<ol class="notes">
${met.map((key, at) => {
  const { says, formula, source, seen } = bases[key];
  return html`<li id="note-${at + 1}"><b>${says}</b>: ${formula}. Source: ${source} (${seenWords[seen]}).</li>
`;
})}</ol>`,
  };
}
