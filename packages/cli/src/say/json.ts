import { unsafe } from './unsafe.js';

/** Every UTF-16 unit of the match as a JSON escape. */
const escaped = (match: string): string =>
  [...Array(match.length).keys()].map((at) => `\\u${match.charCodeAt(at).toString(16).padStart(4, '0')}`).join('');

/**
 * An answer as JSON, keys in the order they have, two spaces a level, a line feed at the end.
 *
 * JSON escapes only the first 32 control characters by itself; the others, with which some terminals start escape
 * sequences too, are escaped here: the same text for whoever parses it, harmless for whoever looks at it.
 */
export const json = (answer: unknown): string => harmless(JSON.stringify(answer, null, 2));

/** The same in one line. */
export const jsonLine = (answer: unknown): string => harmless(JSON.stringify(answer));

const harmless = (text: string): string =>
  `${text.replace(unsafe, (match) => (match === '\n' ? match : escaped(match)))}\n`;
