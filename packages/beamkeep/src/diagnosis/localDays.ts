import { rowAt } from '../columns/index.js';
import { type Cells, cellAt } from './cells.js';
import type { View } from './view.js';

/** One local calendar day of a log. */
export interface LocalDay {
  /** Counted from 1970-01-01. */
  readonly number: number;
  /** First and last row of the trace. */
  readonly from: number;
  readonly to: number;
  /** First and last sample [ms]. */
  readonly start: number;
  readonly end: number;
  /** First cell, and the one after the last. */
  readonly fromCell: number;
  readonly toCell: number;
}

/** The local calendar days that hold samples, in order. */
export function localDays(view: View, cells: Cells): LocalDay[] {
  const { time, until } = view.trace;
  const days: LocalDay[] = [];
  let from = 0;
  while (from < time.length) {
    const number = view.clock.dayNumber(time[from] as number);
    // The next local midnight lies within 26 hours; the offset there may be another one.
    let low = from;
    let high = Math.min(time.length, rowAt(time, (time[from] as number) + 26 * 3_600_000));
    while (low < high) {
      const half = (low + high) >>> 1;
      if (view.clock.dayNumber(time[half] as number) > number) high = half;
      else low = half + 1;
    }
    low = Math.max(low, from + 1);
    const to = low - 1;
    const start = time[from] as number;
    const end = until[to] as number;
    days.push({ number, from, to, start, end, fromCell: cellAt(cells, start), toCell: cellAt(cells, end) + 1 });
    from = low;
  }
  return days;
}
