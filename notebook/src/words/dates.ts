/*
 * Instants on the site's clock, in the reader's way of writing dates. 24 h: a log is read to the minute.
 */

/** Words for instants at one site. */
export interface SiteDates {
  /** "4 Jan 2027, 08:30" */
  moment(instant: number): string;
  /** "4 Jan 2027, 08:30 to 09:15", or with both dates. */
  stretch(from: number, to: number): string;
  /** "4 Jan 2027" */
  date(instant: number): string;
}

/** How a day is written, wherever it is. */
const day = { year: 'numeric', month: 'short', day: 'numeric' } as const;

/** A date is not parted at a line's end. */
const inOneLine = (date: string): string => date.replaceAll(' ', '\u00a0');

const known = new Map<string, SiteDates>();

/** Words for instants in a zone. */
export function siteDates(timeZone: string): SiteDates {
  const old = known.get(timeZone);
  if (old) return old;
  const date = new Intl.DateTimeFormat(undefined, { ...day, timeZone });
  const clock = new Intl.DateTimeFormat(undefined, { timeZone, hour: '2-digit', minute: '2-digit', hourCycle: 'h23' });
  const dateOf = (instant: number): string => (Number.isFinite(instant) ? inOneLine(date.format(instant)) : 'never');
  const moment = (instant: number): string =>
    Number.isFinite(instant) ? `${dateOf(instant)}, ${clock.format(instant)}` : 'never';
  const words: SiteDates = {
    moment,
    date: dateOf,
    stretch(from, to) {
      if (from === to) return moment(from);
      const oneDay = dateOf(from) === dateOf(to);
      return `${moment(from)} to ${oneDay ? clock.format(to) : moment(to)}`;
    },
  };
  known.set(timeZone, words);
  return words;
}

const calendarDay = new Intl.DateTimeFormat(undefined, { ...day, timeZone: 'UTC' });

/** A date of a forecast, "2027-10-02", in the reader's way of writing dates. */
export function dateInWords(isoDate: string): string {
  const instant = Date.parse(`${isoDate}T12:00:00Z`);
  if (Number.isNaN(instant)) return isoDate;
  return inOneLine(calendarDay.format(instant));
}

/** A sentence of the library, its dates in the reader's way of writing them. */
export const withDates = (sentence: string): string => sentence.replace(/\b\d{4}-\d{2}-\d{2}\b/g, dateInWords);
