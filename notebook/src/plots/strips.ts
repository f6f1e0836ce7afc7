import type { NumberedFinding, Window } from '../bench/reading.js';

/*
 * Findings as named bars in as few rows as hold them without one bar or its name covering another. Where there are
 * more than the rows hold, the rest stand in the lowest row without their names, until one zooms in.
 */

/** A finding, its row counted from the top, and whether there is room for its name. */
export interface Strip {
  readonly finding: NumberedFinding;
  readonly row: number;
  readonly named: boolean;
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
    const free = ends.findIndex((taken) => taken < start);
    const row = free >= 0 ? free : Math.min(ends.length, most - 1);
    const named = free >= 0 || ends.length < most;
    const end = Math.min(finding.end, window.to);
    // A name that its bar cannot hold stands beside it.
    const name = named && end - start < room(finding) ? room(finding) : 0;
    ends[row] = Math.max(ends[row] ?? start, finding.end, end + name);
    placed.push({ finding, row, named });
  }
  const crowded = placed.some(({ named }) => !named);
  return crowded ? placed.map((strip) => (strip.row === most - 1 ? { ...strip, named: false } : strip)) : placed;
}

/** Rows that strips take up. */
export const rowsOf = (placed: readonly Strip[]): number =>
  placed.reduce((most, { row }) => Math.max(most, row + 1), 0);
