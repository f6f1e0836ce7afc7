import { limitsInWords, type SiteKey, type SiteSection, siteKeys } from '../src/site/index.js';

/*
 * The table of the keys of a site file in docs/formats.md, drawn from src/site/siteKeys.ts: change the keys there, then
 * run "npm run docs:renew". A test compares the page with the keys.
 */

const begins = '<!-- drawn from the keys: begin -->';
const ends = '<!-- drawn from the keys: end -->';

const sections: Readonly<Record<SiteSection, string>> = {
  site: 'the site',
  log: 'the log',
  beam: 'a beam',
  visit: 'a visit',
};

const cell = (text: string): string => text.replaceAll('|', '\\|');

/** What a key may hold, in words. */
function allowed({ kind, words, limits, unit }: SiteKey): string {
  if (words !== undefined) return words.map((word) => `\`${word}\``).join(', ');
  const range = limits === undefined ? '' : limitsInWords(limits);
  const what = kind === 'number' ? ['a number', unit === '' ? '' : `in ${unit}`, range] : [kindInWords[kind]];
  return what.filter((part) => part !== '').join(', ');
}

const kindInWords: Readonly<Record<SiteKey['kind'], string>> = {
  text: 'text',
  number: 'a number',
  word: 'a word',
  flag: '`true` or `false`',
  zone: 'an IANA zone',
  instant: 'ISO 8601',
  columns: 'a name, or two in a list',
  compensation: 'a word, or an object',
  list: 'a list of objects',
};

function row(key: SiteKey & { readonly key: string }): string {
  const otherwise = key.required
    ? '**required**'
    : `${key.whenLeftOut ?? ''}${key.assumed === true ? ' (told under `assumed`)' : ''}`;
  return `| \`${key.key}\` | ${cell(key.meaning)} | ${cell(allowed(key))} | ${cell(otherwise)} |`;
}

/** The table, as Markdown: section by section. */
export const keysTable = (): string =>
  [
    '| key | meaning | holds | when left out |',
    '|---|---|---|---|',
    ...(['site', 'log', 'beam', 'visit'] as const).flatMap((section) => [
      `| **${sections[section]}** | | | |`,
      ...siteKeys.filter((key) => key.section === section).map(row),
    ]),
  ].join('\n');

/**
 * A page with its table of keys made anew.
 *
 * @throws Error where the page has no place for it
 */
export function withKeys(page: string): string {
  const [from, to] = [page.indexOf(begins), page.indexOf(ends)];
  if (from < 0 || to < from) throw new Error(`the page must hold "${begins}" and, below it, "${ends}"`);
  return `${page.slice(0, from)}${begins}\n\n${keysTable()}\n\n${page.slice(to)}`;
}
