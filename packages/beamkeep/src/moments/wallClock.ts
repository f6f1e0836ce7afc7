import { day } from '../columns/index.js';

/** What the clocks of a site show. */
export interface WallClock {
  /** What the zone adds to UTC at an instant [ms]. */
  offset(instant: number): number;
  /** Number of the local calendar day, counted from 1970-01-01. */
  dayNumber(instant: number): number;
}

/** Day of the week of a calendar day, 1 Monday to 7 Sunday: 1970-01-01 was a Thursday. */
export const weekdayOf = (dayNumber: number): number => ((((dayNumber + 3) % 7) + 7) % 7) + 1;

/** What the clock shows since midnight [ms]. */
export const timeOfDayAt = (clock: WallClock, instant: number): number =>
  instant + clock.offset(instant) - day * clock.dayNumber(instant);

/**
 * When the clock of a calendar day shows a time of day [ms]; in an hour that is skipped or comes twice, one of the
 * two that are possible.
 */
export function instantOnDay(clock: WallClock, dayNumber: number, timeOfDay: number): number {
  const shown = day * dayNumber + timeOfDay;
  return shown - clock.offset(shown - clock.offset(shown));
}

/** An instant on the site's clocks, to the minute: "2027-05-04 06:22". */
export const wallTime = (clock: WallClock, instant: number): string =>
  new Date(instant + clock.offset(instant)).toISOString().slice(0, 16).replace('T', ' ');
