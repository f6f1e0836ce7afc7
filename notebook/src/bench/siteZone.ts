import { day, hour, minute } from 'beamkeep/columns';

/*
 * Clock time at the site. The plotting library knows no zones: it shows the clock time that stands in a string and
 * shifts a number into the zone of the reader's own machine. So every instant becomes a string of the site's clock
 * before it is drawn, and every string that comes back from a plot becomes an instant again.
 *
 * Offsets are asked of the browser once a day and, on a day when the clocks change, once a quarter of an hour.
 */

/** The clock of one IANA zone. */
export interface SiteZone {
  readonly name: string;
  /** Clock time minus UTC at an instant [ms]. */
  offset(instant: number): number;
  /** "2027-03-28 02:30:00.000" on the site's clock. */
  wall(instant: number): string;
  /**
   * The instant at which the site's clock shows this time [ms since 1970 UTC]. An hour shown twice means its first
   * pass; an hour left out means the same distance past the change. NaN when the text is no time.
   */
  instant(wall: string): number;
  /** Whether the clocks change between two instants, both included. */
  changes(from: number, to: number): boolean;
}

const quarter = 15 * minute;

/**
 * The clock of a zone.
 *
 * @param name IANA zone, "Europe/Lisbon"
 * @throws RangeError when there is no such zone
 */
export function siteZone(name: string): SiteZone {
  const format = new Intl.DateTimeFormat('en-US', {
    timeZone: name,
    hourCycle: 'h23',
    era: 'short',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  });
  const asked = new Map<number, number>();

  function ask(instant: number): number {
    const known = asked.get(instant);
    if (known !== undefined) return known;
    const part = { year: 0, month: 0, day: 0, hour: 0, minute: 0, second: 0 };
    for (const { type, value } of format.formatToParts(instant))
      if (type in part) Object.assign(part, { [type]: Number(value) });
    const clock = Date.UTC(part.year, part.month - 1, part.day, part.hour, part.minute, part.second);
    const offset = clock - instant;
    asked.set(instant, offset);
    return offset;
  }

  function offset(instant: number): number {
    const midnight = Math.floor(instant / day) * day;
    const before = ask(midnight);
    return before === ask(midnight + day) ? before : ask(Math.floor(instant / quarter) * quarter);
  }

  function wall(instant: number): string {
    if (!Number.isFinite(instant)) return '';
    return new Date(instant + offset(instant)).toISOString().slice(0, 23).replace('T', ' ');
  }

  function instant(text: string): number {
    const clock = clockTime(text);
    if (Number.isNaN(clock)) return Number.NaN;
    const early = clock - offset(clock - day);
    const late = clock - offset(clock + day);
    const fits = [early, late].filter((guess) => guess + offset(guess) === clock);
    return fits.length > 0 ? Math.min(...fits) : early;
  }

  function changes(from: number, to: number): boolean {
    const step = 28 * day;
    for (let at = from; at < to; at += step) if (offset(at) !== offset(Math.min(to, at + step))) return true;
    return false;
  }

  return { name, offset, wall, instant, changes };
}

/** Clock time as if it were UTC [ms]; takes "2027-03-28", "2027-03-28 02:30" and more digits; NaN otherwise. */
function clockTime(text: string): number {
  const match = /^(\d{4})-(\d\d)-(\d\d)(?:[ T](\d\d)(?::(\d\d)(?::(\d\d(?:\.\d+)?))?)?)?$/.exec(text.trim());
  if (!match) return Number.NaN;
  const [, year, month, date, hours = '0', minutes = '0', seconds = '0'] = match;
  return (
    Date.UTC(Number(year), Number(month) - 1, Number(date)) +
    Number(hours) * hour +
    Number(minutes) * minute +
    Math.round(Number(seconds) * 1000)
  );
}
