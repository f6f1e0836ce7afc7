import { day } from '../../columns/index.js';
import { median } from '../../statistics/index.js';
import { cellAt } from '../cells.js';
import type { Picture } from '../picture.js';

/** Days looked at on either side of a step. */
const reach = 5;

/**
 * Daily sway in dB after an instant over that before it; NaN where the beam does not sway or has too few days.
 * Growth proves that aim was lost; none proves nothing.
 */
export function swayAround({ parts, days, view }: Picture, instant: number): number {
  const { cycle, cells, cellNoise } = parts;
  const sway = (from: number, to: number): number[] =>
    days
      .filter((d) => d.start >= from && d.end <= to && d.end - d.start > 0.8 * day)
      .map((d) => {
        const part = cycle.subarray(d.fromCell, d.toCell);
        return Math.max(...part) - Math.min(...part);
      });
  const before = median(sway(instant - (reach + 1) * day, instant));
  const after = median(sway(instant, Math.min(view.to, instant + (reach + 1) * day)));
  if (!(Math.max(before, after) > 4 * cellNoise) || cellAt(cells, instant) < 0) return Number.NaN;
  return after / Math.max(before, cellNoise);
}
