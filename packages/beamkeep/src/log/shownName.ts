/**
 * A file's name as messages show it: characters that could steer a terminal or turn the direction of writing stand as
 * `\u{…}`.
 */
export const shownName = (name: string): string =>
  name.replace(/[\p{Cc}\p{Cf}\p{Zl}\p{Zp}]/gu, (c) => `\\u{${(c.codePointAt(0) ?? 0).toString(16)}}`);
