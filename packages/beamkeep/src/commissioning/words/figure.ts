/** Digits after the point beyond which a number is as good as nothing. */
const mostDecimals = 5;

/**
 * A number as a sentence or a table has it: three significant digits, no exponent, no trailing zeros.
 *
 * @returns "never" for an endless number, "not known" for a missing one
 * @example figure(57.749) // 57.7
 */
export function figure(value: number, digits = 3): string {
  if (Number.isNaN(value)) return 'not known';
  if (!Number.isFinite(value)) return 'never';
  const size = Math.abs(value);
  const decimals = size === 0 ? 0 : Math.max(0, digits - 1 - Math.floor(Math.log10(size)));
  return String(Number(value.toFixed(Math.min(decimals, mostDecimals)))).replace(/^-0$/, '0');
}

/** A text for print, where a minus is no hyphen. */
export const printed = (text: string): string => text.replace(/(^|[\s(])-(?=\d)/g, '$1−');

/** "a, b and c" */
export const listed = (words: readonly string[]): string =>
  words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
