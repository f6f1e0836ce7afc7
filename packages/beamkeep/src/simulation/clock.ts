import { clockChanges, zoneOffset } from '../clocks/index.js';
import { day, hour } from '../columns/index.js';

/** The wall clock of a place. */
export interface LocalClock {
  /** What the wall clock shows at an instant, as if it were UTC [ms]. */
  wall(instant: number): number;
  /** The instant at which the wall clock shows this; where it does so twice, the first; where never, an hour on. */
  instant(wall: number): number;
  /** Number of the local calendar day, counted from 1 January 1970. */
  day(instant: number): number;
  /** Hour of the local day [h], 0 to 24. */
  hour(instant: number): number;
}

/**
 * The wall clock of a zone over a stretch of time, daylight saving included.
 *
 * @param timeZone IANA zone
 * @param from first instant that matters [ms]
 * @param to last instant that matters [ms]
 */
export function localClock(timeZone: string, from: number, to: number): LocalClock {
  const changes = clockChanges(timeZone, from - 3 * day, to + 3 * day);
  const starts = [from - 3 * day, ...changes.map(({ instant }) => instant)];
  const offsets = [zoneOffset(timeZone, from - 3 * day), ...changes.map(({ after }) => after)];
  let last = 0;
  const offset = (instant: number) => {
    while (last + 1 < starts.length && instant >= (starts[last + 1] as number)) last++;
    while (last > 0 && instant < (starts[last] as number)) last--;
    return offsets[last] as number;
  };
  const wall = (instant: number) => instant + offset(instant);
  return {
    wall,
    instant: (shown) => {
      const early = shown - offset(shown - 14 * hour);
      return wall(early) === shown ? early : shown - offset(early);
    },
    day: (instant) => Math.floor(wall(instant) / day),
    hour: (instant) => (((wall(instant) % day) + day) % day) / hour,
  };
}

/** Day of the week of a local calendar day: 0 is Sunday. */
export const weekday = (localDay: number): number => (((localDay + 4) % 7) + 7) % 7;
