import type { NumberedFinding, Window } from '../bench/reading.js';

/*
 * Findings as named bars in as few rows as hold them without one bar or its name covering another. Where there are
 * more than the rows hold, the rest stand in the lowest row by their numbers alone, until one zooms in.
 */

/** A finding and its place. */
export interface Strip {
  readonly finding: NumberedFinding;
  /** Counted from the top. */
  readonly row: number;
  /** Whether there is room for its name. */
  readonly named: boolean;
  /** Whether the edge of the plot leaves room for the name only before the bar. */
  readonly before: boolean;
}

/**
 * Rows for the findings within a window.
 *
 * @param findings in order of their start
 * @param window the stretch in sight
 * @param room least length that a bar takes up with its name [ms]
 * @param most most rows
 */
export function strips(
  findings: readonly NumberedFinding[],
  window: Window,
  room: (finding: NumberedFinding) => number,
  most: number,
): Strip[] {
  const ends: number[] = [];
  const placed: Strip[] = [];
  for (const finding of findings) {
    if (finding.start > window.to || finding.end < window.from) continue;
    const start = Math.max(finding.start, window.from);
    const end = Math.min(finding.end, window.to);
    // A name that its bar cannot hold stands beside it.
    const name = end - start < room(finding) ? room(finding) : 0;
    const before = end + name > window.to && start - name >= window.from;
    const free = ends.findIndex((taken) => taken < (before ? start - name : start));
    const row = free >= 0 ? free : Math.min(ends.length, most - 1);
    const named = free >= 0 || ends.length < most;
    ends[row] = Math.max(ends[row] ?? start, finding.end, named && !before ? end + name : end);
    placed.push({ finding, row, named, before });
  }
  const crowded = placed.some(({ named }) => !named);
  return crowded ? placed.map((strip) => (strip.row === most - 1 ? { ...strip, named: false } : strip)) : placed;
}

/** Rows that strips take up. */
export const rowsOf = (placed: readonly Strip[]): number =>
  placed.reduce((most, { row }) => Math.max(most, row + 1), 0);
