/*
 * Pages and drawings are made of text that is escaped unless it was made here. Whatever comes from a file or a person
 * goes in as text and comes out as text: no name in a record can become a tag.
 */

/** A piece of HTML or SVG that is safe to put into another. */
export interface Markup {
  readonly markup: string;
}

/** What may stand in a piece of markup: text and numbers are escaped, pieces go in as they are, nothing is left out. */
export type Content = string | number | Markup | undefined | false | readonly Content[];

const entities: Readonly<Record<string, string>> = {
  '&': '&amp;',
  '<': '&lt;',
  '>': '&gt;',
  '"': '&quot;',
  "'": '&#39;',
};

// Control characters, and marks that turn the direction of writing, are shown as what they are.
const unseen = /[\p{Cc}\p{Zl}\p{Zp}\u200b-\u200f\u202a-\u202e\u2060-\u2069\ufeff\ufffe\uffff]/gu;

/** Text as it may stand in an element or between double quotes. */
export const escaped = (text: string): string =>
  text
    .replace(unseen, (c) => (c === '\n' || c === '\t' ? ' ' : `\\u{${(c.codePointAt(0) ?? 0).toString(16)}}`))
    .replace(/\p{Cs}/gu, '\ufffd')
    .replace(/[&<>"']/g, (sign) => entities[sign] as string);

const written = (content: Content): string => {
  if (content === undefined || content === false) return '';
  if (typeof content === 'string') return escaped(content);
  if (typeof content === 'number') return String(content);
  if ('markup' in content) return content.markup;
  return content.map(written).join('');
};

/**
 * A piece of HTML or SVG from a template: everything put into it is escaped.
 *
 * @example html`<p>${'<b>'}</p>`.markup // '<p>&lt;b&gt;</p>'
 */
export const html = (parts: TemplateStringsArray, ...contents: readonly Content[]): Markup => ({
  markup: parts.reduce((text, part, at) => text + written(contents[at - 1]) + part),
});

/** The same under the name of what it draws. */
export const svg = html;
