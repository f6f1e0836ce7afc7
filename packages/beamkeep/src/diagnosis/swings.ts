import { day } from '../columns/index.js';
import { median } from '../statistics/index.js';
import type { LocalDay } from './localDays.js';
import type { Picture } from './picture.js';
import { levelOf } from './view.js';

/** How far the level sways on one local day. */
export interface Swing extends LocalDay {
  /** Trough to crest of the daily cycle, share of clean air. */
  readonly swing: number;
  /** Share of the day's course that the cycle explains, 0 to 1. */
  readonly explained: number;
}

/** The daily swings of a beam whose cycle could be fitted, whole days and the parts of days at both ends. */
export function swings({ parts, days }: Pick<Picture, 'parts' | 'days'>): Swing[] {
  const { course, slow, cycle, cycleFitted } = parts;
  if (!cycleFitted) return [];
  return days.flatMap((d) => {
    let low = Number.POSITIVE_INFINITY;
    let high = Number.NEGATIVE_INFINITY;
    let rest = 0;
    let whole = 0;
    const base = median(slow.subarray(d.fromCell, d.toCell));
    const middle = median(course.subarray(d.fromCell, d.toCell).map((v, i) => v - (slow[d.fromCell + i] as number)));
    for (let c = d.fromCell; c < d.toCell; c++) {
      const level = levelOf(base + (cycle[c] as number));
      low = Math.min(low, level);
      high = Math.max(high, level);
      const x = (course[c] as number) - (slow[c] as number);
      if (Number.isNaN(x)) continue;
      rest += Math.abs(x - (cycle[c] as number));
      whole += Math.abs(x - middle);
    }
    if (d.end - d.start < 0.25 * day) return [];
    return [{ ...d, swing: high - low, explained: whole > 0 ? Math.max(0, 1 - rest / whole) : 0 }];
  });
}
