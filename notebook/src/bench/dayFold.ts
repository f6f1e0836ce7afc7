import { day, type Trace } from 'beamkeep/columns';
import type { SiteZone } from './siteZone.js';

/*
 * The log folded at midnight: one column a date, one row a time of day. What comes with the hour stands as a level
 * band, what comes with the sun as a band that wanders with the season, what comes once as a spot.
 */

/** A day-folded trace. */
export interface DayFold {
  /** Dates on the site's calendar, "2027-01-04", without holes. */
  readonly dates: readonly string[];
  /** Rows a day: each stands for 24 h divided by it, from midnight on. */
  readonly rows: number;
  /** Mean level, share of clean air, row by row: `level[row * dates.length + column]`; NaN without samples. */
  readonly level: Float32Array;
}

/**
 * Folds a trace by the site's clock. On a day on which the clocks change, the hour shown twice is averaged and the
 * hour left out stays empty.
 *
 * @param trace the beam's trace
 * @param zone the site's clock
 * @param rows rows a day
 */
export function dayFold(trace: Trace, zone: SiteZone, rows: number): DayFold {
  const { time, level, count } = trace;
  if (time.length === 0) return { dates: [], rows, level: new Float32Array(0) };
  const clock = (row: number): number => (time[row] as number) + zone.offset(time[row] as number);
  const firstDay = Math.floor(clock(0) / day);
  const columns = Math.floor(clock(time.length - 1) / day) - firstDay + 1;
  const sum = new Float64Array(rows * columns);
  const weight = new Float64Array(rows * columns);
  for (let row = 0; row < time.length; row++) {
    const now = clock(row);
    const date = Math.floor(now / day);
    const cell = Math.floor(((now - date * day) * rows) / day) * columns + date - firstDay;
    sum[cell] = (sum[cell] as number) + (level[row] as number) * (count[row] as number);
    weight[cell] = (weight[cell] as number) + (count[row] as number);
  }
  return {
    dates: Array.from({ length: columns }, (_, column) => isoDate(firstDay + column)),
    rows,
    level: Float32Array.from(sum, (total, cell) => total / (weight[cell] as number)),
  };
}

/** "2027-01-04" of a number of days since 1970. */
const isoDate = (days: number): string => new Date(days * day).toISOString().slice(0, 10);
