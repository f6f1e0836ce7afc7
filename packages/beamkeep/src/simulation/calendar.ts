import { day, hour } from '../columns/index.js';
import { type LocalClock, weekday } from './clock.js';
import { random } from './random.js';

/** When people work. */
export interface WorkCalendar {
  /** `week`: the same days every week; `rota`: so many days on, so many off. */
  readonly days: { readonly week: readonly number[] } | { readonly on: number; readonly off: number };
  /** Local hour at which work begins [h]. */
  readonly opens: number;
  /** Local hour at which work ends [h]; before `opens` when the shift passes midnight. */
  readonly closes: number;
  /** Share of work days on which nobody comes (feasts, strikes, holidays), 0 to 1. */
  readonly idle: number;
}

/** A shift: when it begins and ends [ms]. */
export interface Shift {
  readonly day: number;
  readonly from: number;
  readonly to: number;
}

/** Whether people work on a local calendar day. */
export function works(calendar: WorkCalendar, seed: number, localDay: number): boolean {
  const { days } = calendar;
  const planned = 'week' in days ? days.week.includes(weekday(localDay)) : localDay % (days.on + days.off) < days.on;
  return planned && !random(seed, 'idle', localDay).chance(calendar.idle);
}

/** Every shift that begins within a stretch of time, in order. */
export function shifts(calendar: WorkCalendar, seed: number, clock: LocalClock, from: number, to: number): Shift[] {
  const found: Shift[] = [];
  const { opens, closes } = calendar;
  const length = closes > opens ? closes - opens : closes + 24 - opens;
  for (let localDay = clock.day(from) - 1; localDay <= clock.day(to); localDay++) {
    if (!works(calendar, seed, localDay)) continue;
    const begin = clock.instant(localDay * day + opens * hour);
    const end = begin + length * hour;
    if (end > from && begin < to) found.push({ day: localDay, from: begin, to: end });
  }
  return found;
}
