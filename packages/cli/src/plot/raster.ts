import type { Levels } from './levels.js';

/** What stands at a dot of the plot. */
export const dot = { empty: 0, light: 1, middle: 2 } as const;

/** Dots of a plot, row by row from the top. */
export interface Raster {
  readonly rows: number;
  readonly columns: number;
  readonly dots: Uint8Array;
}

/** The range of levels that a plot shows, share of clean air. */
export interface Range {
  readonly top: number;
  readonly bottom: number;
}

/** Row of a level, 0 at the top; -1 above the plot, `rows` below it. */
export function rowOf(level: number, { top, bottom }: Range, rows: number): number {
  const row = Math.floor(((top - level) / (top - bottom)) * rows);
  return Math.min(rows, Math.max(-1, row));
}

/** Light that always came through, filled from below up to the least sample of each stretch; a dot at its median. */
export function raster({ low, middle }: Levels, range: Range, rows: number): Raster {
  const columns = low.length;
  const dots = new Uint8Array(rows * columns);
  for (let column = 0; column < columns; column++) {
    const least = low[column] ?? Number.NaN;
    if (Number.isNaN(least)) continue;
    for (let row = Math.max(0, rowOf(least, range, rows)); row < rows; row++) dots[row * columns + column] = dot.light;
    const row = Math.min(rows - 1, Math.max(0, rowOf(middle[column] ?? least, range, rows)));
    dots[row * columns + column] = dot.middle;
  }
  return { rows, columns, dots };
}

/**
 * The range to show: clean air, the alarm threshold and every median lie within it. Short dips may leave it below, or
 * one blocked beam would flatten months of dirt into a line; they show as empty columns.
 */
export function rangeOf({ middle }: Levels, alarmLevel: number): Range {
  const present = middle.filter((value) => !Number.isNaN(value));
  const most = present.reduce((a, b) => Math.max(a, b), 1);
  const least = present.reduce((a, b) => Math.min(a, b), alarmLevel);
  return {
    top: Math.min(1.5, Math.ceil((most - 0.005) * 20) / 20),
    bottom: Math.max(0, Math.floor((least - 0.02) * 20) / 20),
  };
}
