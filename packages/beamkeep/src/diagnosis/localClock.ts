import { type ClockChange, clockChanges, zoneOffset } from '../clocks/index.js';
import { day, hour } from '../columns/index.js';

/** Wall time of a zone, quick enough to be asked of every sample. */
export interface LocalClock {
  /** What the zone adds to UTC at an instant [ms]. */
  offset(instant: number): number;
  /** Number of the local calendar day, counted from 1970-01-01. */
  dayNumber(instant: number): number;
  /** Local time of day [h], 0 to 24 (24 excluded). */
  hourOfDay(instant: number): number;
  /** Day of the week, 1 Monday to 7 Sunday. */
  weekday(instant: number): number;
}

/**
 * The clock of an IANA zone between two instants. The few changes of its offset are looked up once.
 *
 * @param timeZone IANA zone
 * @param from earliest instant that will be asked [ms]
 * @param to latest instant that will be asked [ms]
 */
export function localClock(timeZone: string, from: number, to: number): LocalClock {
  const first = zoneOffset(timeZone, from);
  const changes = clockChanges(timeZone, from, to);
  const offset = (instant: number): number => {
    for (let i = changes.length - 1; i >= 0; i--) {
      const { instant: start, after } = changes[i] as ClockChange;
      if (instant >= start) return after;
    }
    return first;
  };
  const dayNumber = (instant: number): number => Math.floor((instant + offset(instant)) / day);
  return {
    offset,
    dayNumber,
    hourOfDay: (instant) => {
      const local = instant + offset(instant);
      return (local - Math.floor(local / day) * day) / hour;
    },
    // 1970-01-01 was a Thursday.
    weekday: (instant) => ((((dayNumber(instant) + 3) % 7) + 7) % 7) + 1,
  };
}
