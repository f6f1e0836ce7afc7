// Control characters, line and paragraph separators, and marks that turn the direction of writing: none may reach a
// terminal or a page from inside a file.
const unprintable = /[\u007f-\u009f\u200b-\u200f\u2028-\u202e\u2060-\u2069\ufeff]/g;

/** Longest stretch of a value that a message repeats. */
const longest = 60;

/**
 * A value found in a file, safe to put into a message: texts in quotes and cut to a readable length, with every
 * character that could steer a terminal written as `\u....`; lists and objects by their kind only.
 *
 * @param value whatever was found
 * @example quoted('35 %') // "35 %" with its quotes
 * @example quoted([1, 2]) // a list
 */
export function quoted(value: unknown): string {
  if (typeof value === 'string') {
    const text = value.length > longest ? `${value.slice(0, longest)}…` : value;
    return JSON.stringify(text).replace(unprintable, (c) => `\\u${c.charCodeAt(0).toString(16).padStart(4, '0')}`);
  }
  if (Array.isArray(value)) return 'a list';
  if (typeof value === 'object' && value !== null) return 'an object';
  if (typeof value === 'function' || typeof value === 'symbol') return `a ${typeof value}`;
  return String(value);
}
