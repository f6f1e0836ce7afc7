/**
 * A paragraph in lines no longer than `width`, each but the first led by `hanging`, the first by `first`.
 * A word longer than a line stands alone on one. A no-break space (U+00A0) keeps two words together and is printed as
 * a plain space.
 */
export function wrap(text: string, width: number, first = '', hanging = first): string {
  const lines: string[] = [];
  let line = first;
  let empty = true;
  for (const word of text.split(' ').filter((part) => part !== '')) {
    if (!empty && [...line].length + 1 + [...word].length > width) {
      lines.push(line);
      line = hanging;
      empty = true;
    }
    line += empty ? word : ` ${word}`;
    empty = false;
  }
  return [...lines, line].join('\n').replaceAll('\u00a0', ' ');
}

/** Numbers kept together with their units at the end of a line. */
export const unparted = (text: string): string =>
  text.replace(/(\d) (%|dB|[dhms]|min|mm|days?)(?![\w])/g, '$1\u00a0$2');
