import type { Limits, SiteKey } from './siteKeys.js';

/** Whether a number keeps within its limits. */
export const within = (value: number, { above, atLeast, below, atMost }: Limits = {}): boolean =>
  Number.isFinite(value) &&
  (above === undefined || value > above) &&
  (atLeast === undefined || value >= atLeast) &&
  (below === undefined || value < below) &&
  (atMost === undefined || value <= atMost);

/** Limits in words: "above 0 and at most 100". */
export function limitsInWords({ above, atLeast, below, atMost }: Limits = {}): string {
  const low = above !== undefined ? `above ${above}` : atLeast !== undefined ? `${atLeast} or more` : '';
  const high = below !== undefined ? `below ${below}` : atMost !== undefined ? `at most ${atMost}` : '';
  if (atLeast !== undefined && atMost !== undefined) return `from ${atLeast} to ${atMost}`;
  return [low, high].filter((part) => part !== '').join(' and ');
}

/** What the value of a key should have been, as a demand: "give a number above 0 and at most 100 [%]". */
export function wanted({ kind, unit, limits, words }: SiteKey): string {
  switch (kind) {
    case 'number': {
      const range = limitsInWords(limits);
      const [of, in_] = [range === '' ? '' : ` ${range}`, unit === '' ? '' : ` [${unit}]`];
      return `give a number${of}${in_}`;
    }
    case 'word':
      return `use ${inWords((words ?? []).map((w) => `"${w}"`))}`;
    case 'flag':
      return 'give true or false, without quotes';
    case 'text':
      return 'give a text in quotes that is not empty and holds no control characters';
    case 'zone':
      return 'give a zone by its IANA name, as in "Europe/Lisbon"';
    case 'instant':
      return 'give date and time as in "2027-03-02T09:00:00Z"';
    case 'columns':
      return 'give the name of a column, or two different names (date, time) as a list';
    case 'compensation':
      return 'use "none", "unknown" or { "limitDecibels": n }';
    case 'list':
      return 'give a list of objects: [ { ... } ]';
  }
}

/** "a, b or c" */
export const inWords = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} or ${words[words.length - 1]}`;
