import { unsafe } from './unsafe.js';

const named: Readonly<Record<string, string>> = { '\n': '\\n', '\r': '\\r', '\t': '\\t' };

const shown = (character: string): string =>
  named[character] ?? `\\u{${(character.codePointAt(0) ?? 0).toString(16).padStart(2, '0')}}`;

/**
 * Text of foreign origin (a name in a log, a site or an argument) made safe to print: one line, no control
 * characters, no terminal escapes, no turning of the writing direction. They are shown, not dropped.
 *
 * @param limit longest result; what is longer is cut and says so
 * @example plain('B1\u001b[31m') // 'B1\\u{1b}[31m'
 */
export function plain(text: string, limit = 1000): string {
  const cut = text.length > limit ? `${text.slice(0, limit)}...` : text;
  return cut.replace(unsafe, shown);
}

/** A copy of an answer in which every text is safe to print: done once, so that no printer can forget it. */
export function plainly<T>(answer: T): T;
export function plainly(answer: unknown): unknown {
  if (typeof answer === 'string') return plain(answer);
  if (Array.isArray(answer)) return answer.map((each: unknown) => plainly(each));
  if (answer === null || typeof answer !== 'object') return answer;
  return Object.fromEntries(Object.entries(answer).map(([key, value]) => [key, plainly<unknown>(value)]));
}
