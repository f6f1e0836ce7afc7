/** Longest name of a saved file, without its ending. */
const longest = 100;

/**
 * A name for a saved file out of words of any origin: what is no letter, digit, space, dash or underscore is left out.
 *
 * @param words what the file is about, from the wide to the narrow; empty ones are passed over
 * @param ending without its point
 * @example fileName(['Tram depot, hall', 'signal', 'B1'], 'svg') // "Tram depot hall - signal - B1.svg"
 */
export function fileName(words: readonly string[], ending: string): string {
  const harmless = words.map((word) =>
    word
      .replace(/[^\p{L}\p{N} _-]/gu, '')
      .replace(/\s+/g, ' ')
      .trim(),
  );
  const name = harmless.filter((word) => word !== '').join(' - ');
  return `${[...name].slice(0, longest).join('').trim() || 'worksheet'}.${ending}`;
}
