import type { NumberedFinding } from '../bench/reading.js';

/*
 * Findings as named bars in as few rows as hold them without one bar or its name covering another. The rows are
 * found for the whole log and stay while the plot is zoomed, so that a bar does not jump.
 */

/** A finding and its row, counted from the top. */
export interface Strip {
  readonly finding: NumberedFinding;
  readonly row: number;
}

/**
 * Rows for findings.
 *
 * @param findings in order of their start
 * @param room least length that a bar takes up with its name [ms]
 */
export function strips(findings: readonly NumberedFinding[], room: (finding: NumberedFinding) => number): Strip[] {
  const ends: number[] = [];
  return findings.map((finding) => {
    const end = Math.max(finding.end, finding.start + room(finding));
    let row = ends.findIndex((taken) => taken < finding.start);
    if (row < 0) row = ends.length;
    ends[row] = end;
    return { finding, row };
  });
}
