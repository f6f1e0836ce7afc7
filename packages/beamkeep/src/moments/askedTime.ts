import { hour, minute, second, UsageError } from '../columns/index.js';
import { instantOf, quoted } from '../site/index.js';

/** A time that a person asks about: one instant, or a time of day that comes again. */
export type AskedTime =
  | { readonly kind: 'instant' /** [ms] */; readonly instant: number }
  | {
      readonly kind: 'time-of-day';
      /** What the clock shows, since midnight [ms]. */
      readonly timeOfDay: number;
      /** 1 Monday to 7 Sunday; undefined: any day. */
      readonly weekday: number | undefined;
    };

/** Days of the week, Monday first. */
export const weekdays = ['Monday', 'Tuesday', 'Wednesday', 'Thursday', 'Friday', 'Saturday', 'Sunday'] as const;

const clockTime = /^(\d{1,2}):(\d{2})(?::(\d{2}))?$/;
const fillers = new Set(['on', 'at', 'every', 'each']);
const forms = 'such as "2027-03-16T06:40:00Z", "2027-03-16 06:40", "06:40" or "Tue 06:40"';

/**
 * Reads a time as a person asks for it: an instant by ISO 8601, a date and time on the site's clocks, a time of day,
 * or a time of day on a day of the week ("Tue 06:40", "06:40 on Tuesdays").
 *
 * @param text as written
 * @param timeZone IANA zone of the site
 * @throws UsageError for what is no such time, or an hour that a change of the clocks skips or repeats
 * @example askedTime('Tue 06:40', 'Europe/Lisbon') // { kind: 'time-of-day', timeOfDay: 24000000, weekday: 2 }
 */
export function askedTime(text: string, timeZone: string): AskedTime {
  const written = text.trim();
  if (/^[+-]?\d{4}/.test(written)) {
    const read = instantOf(written, timeZone);
    if ('instant' in read) return { kind: 'instant', instant: read.instant };
    if (read.why === 'clock-change') {
      throw new UsageError(
        `${quoted(text)}: the clocks of ${timeZone} were changed then and skip or repeat this hour: add the offset from UTC, such as "+01:00"`,
      );
    }
    throw new UsageError(`${quoted(text)} is not a time: write it with its date and hour, ${forms}`);
  }
  let timeOfDay: number | undefined;
  let weekday: number | undefined;
  for (const word of written.toLowerCase().split(/[\s,]+/)) {
    const [, hours, minutes, seconds = '0'] = clockTime.exec(word) ?? [];
    const day = dayNamed(word);
    if (timeOfDay === undefined && hours !== undefined && Number(hours) < 24 && Number(minutes) < 60)
      timeOfDay = Number(hours) * hour + Number(minutes) * minute + (Number(seconds) % 60) * second;
    else if (weekday === undefined && day !== undefined) weekday = day;
    else if (!fillers.has(word)) throw new UsageError(`${quoted(text)} is not a time: use one ${forms}`);
  }
  if (timeOfDay === undefined) throw new UsageError(`${quoted(text)} names no time of day: use one ${forms}`);
  return { kind: 'time-of-day', timeOfDay, weekday };
}

/** The day of a word: its name, three letters of it or more, or several of it. */
function dayNamed(word: string): number | undefined {
  const name = word.replace(/\.$/, '').replace(/s$/, '');
  if (name.length < 3) return undefined;
  const at = weekdays.findIndex((each) => each.toLowerCase().startsWith(name));
  return at < 0 ? undefined : at + 1;
}
