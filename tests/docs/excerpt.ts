/*
 * A page shows a part of what a command prints: lines as they are, and a line "…" for any number that are left out.
 * Numbers and words go out of date whenever the diagnosis learns, so the comparison that finds them out of date can also
 * write the new ones: a line is known again by its words, whatever its numbers.
 */

/** The mark for lines left out. */
const leftOut = '…';

/** A line without its numbers, its spacing and the dots of a plot. */
const words = (line: string): string =>
  line
    .replace(/(?<!\w)[-+]?\d+(?:[.,:\u2009-]\d+)*/g, '#')
    .replace(/[\u2800-\u28ff\s]+/g, ' ')
    .trim();

/**
 * The excerpt with the lines that are printed now.
 *
 * @param excerpt what the page shows
 * @param printed all that is printed
 * @param reworded whether lines may have other words now, as long as one near them is known again
 * @throws Error where a line of the excerpt is no longer printed
 */
export function renewed(excerpt: string, printed: string, reworded = false): string {
  const lines = printed
    .trimEnd()
    .split('\n')
    .map((line) => line.trimEnd());
  const shown = excerpt.split('\n');
  const result: string[] = [];
  /** The first printed line that is not told yet, and whether lines may be skipped before the next one. */
  let next = 0;
  let free = false;
  const find = (line: string): number => lines.findIndex((each, i) => i >= next && words(each) === words(line));
  for (let i = 0; i < shown.length; i++) {
    const line = shown[i] ?? '';
    if (line === leftOut) {
      free = true;
      result.push(line);
      continue;
    }
    const at = find(line);
    if (reworded && !free && at !== next) {
      const rest = shown.slice(i + 1, shown.indexOf(leftOut, i) < 0 ? undefined : shown.indexOf(leftOut, i));
      const known = rest.findIndex((each) => find(each) >= 0);
      const until = known < 0 ? next + 1 + rest.length : find(rest[known] ?? '');
      result.push(...lines.slice(next, until));
      next = until;
      i += known < 0 ? rest.length : known;
      continue;
    }
    if (at < 0 || (!free && at !== next)) {
      throw new Error(`no longer printed here: "${line}"\nbut: "${lines[next]}"`);
    }
    result.push(lines[at] ?? '');
    next = at + 1;
    free = false;
  }
  if (free) return result.join('\n');
  const rest = lines.slice(next);
  if (rest.length > 0 && !reworded) throw new Error(`printed, but not shown: "${rest[0]}"`);
  return [...result, ...rest].join('\n');
}
