import leven from 'leven';

/**
 * The known word that is most like a found one; undefined where none is known.
 *
 * @param found the word as written
 * @param known the words that would have been right
 */
export function nearest(found: string, known: readonly string[]): string | undefined {
  let best: string | undefined;
  let least = Number.POSITIVE_INFINITY;
  const word = found.slice(0, 100).toLowerCase();
  for (const candidate of known) {
    const distance = leven(word, candidate.toLowerCase());
    if (distance < least) {
      least = distance;
      best = candidate;
    }
  }
  return best;
}

/** The nearest known word, only where it is near enough to be what was meant: at most a third of it differs. */
export function meant(found: string, known: readonly string[]): string | undefined {
  const best = nearest(found, known);
  if (best === undefined) return undefined;
  return leven(found.toLowerCase(), best.toLowerCase()) <= Math.max(1, best.length / 3) ? best : undefined;
}
