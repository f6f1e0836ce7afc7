import { day, type Trace } from 'beamkeep/columns';
import type { SiteZone } from './siteZone.js';

/** One row a date: noon of it at the site and two levels, each a share of clean air. */
export interface DailyLevels {
  readonly clock: readonly string[];
  /** Median level of the day. */
  readonly middle: Float64Array;
  /** Level that a twentieth of the day stays below: the low of the daily sway, short events left out. */
  readonly low: Float64Array;
}

/**
 * A trace day by day on the site's calendar. Days with less than a quarter of the usual samples are NaN.
 *
 * @param trace the beam's trace
 * @param zone the site's clock
 * @param leftOut stretches that are no part of the slow loss, inclusive [ms]
 */
export function dailyLevels(
  whole: Trace,
  zone: SiteZone,
  leftOut: readonly (readonly [number, number])[],
): DailyLevels {
  const trace = without(whole, leftOut);
  const { time } = trace;
  const date = (row: number): number => Math.floor(((time[row] as number) + zone.offset(time[row] as number)) / day);
  const clock: string[] = [];
  const samples: number[] = [];
  const middle: number[] = [];
  const low: number[] = [];
  for (let row = 0, today = time.length > 0 ? date(0) : 0; row < time.length; today++) {
    const first = row;
    while (row < time.length && date(row) === today) row++;
    samples.push(samplesIn(trace, first, row));
    clock.push(`${new Date(today * day).toISOString().slice(0, 10)} 12:00`);
    middle.push(weightedQuantile(trace, first, row, 0.5));
    low.push(weightedQuantile(trace, first, row, 0.05));
  }
  const usual = [...samples].sort((a, b) => a - b)[samples.length >> 1] ?? 0;
  const full = (levels: readonly number[]): Float64Array =>
    Float64Array.from(levels, (level, date) => ((samples[date] as number) < usual / 4 ? Number.NaN : level));
  return { clock, middle: full(middle), low: full(low) };
}

/** The rows of a trace that begin in none of these stretches. */
function without(trace: Trace, leftOut: readonly (readonly [number, number])[]): Trace {
  if (leftOut.length === 0) return trace;
  const stays = (_: unknown, row: number): boolean => {
    const instant = trace.time[row] as number;
    return !leftOut.some(([start, end]) => instant >= start && instant <= end);
  };
  return {
    time: trace.time.filter(stays),
    until: trace.until.filter(stays),
    level: trace.level.filter(stays),
    low: trace.low.filter(stays),
    high: trace.high.filter(stays),
    spread: trace.spread.filter(stays),
    count: trace.count.filter(stays),
  };
}

function samplesIn({ count }: Trace, first: number, last: number): number {
  let total = 0;
  for (let row = first; row < last; row++) total += count[row] as number;
  return total;
}

/** Level that a share of the samples of some rows stays below; a row counts as often as it has samples. */
function weightedQuantile(trace: Trace, first: number, last: number, share: number): number {
  if (first === last) return Number.NaN;
  const { level, count } = trace;
  const rows = Uint32Array.from({ length: last - first }, (_, i) => first + i);
  rows.sort((a, b) => (level[a] as number) - (level[b] as number));
  const total = samplesIn(trace, first, last);
  let sum = 0;
  for (const row of rows) {
    sum += count[row] as number;
    if (sum >= share * total) return level[row] as number;
  }
  return Number.NaN;
}
