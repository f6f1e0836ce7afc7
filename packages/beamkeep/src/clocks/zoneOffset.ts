/*
 * Formatters by zone: one takes twenty times as long to make as to use. A program meets few zones, and each entry
 * depends on nothing but its key.
 */
const formatters = new Map<string, Intl.DateTimeFormat>();

/** Last instant that a date can hold [ms]; the first is as far before 1970 (ECMA-262, 21.4.1.1). */
const lastDate = 8.64e15;

const offsetInWords = /GMT(?:([+-])(\d\d):(\d\d)(?::(\d\d))?)?$/;

/**
 * What the clocks of a zone add to UTC, as the engine's own copy of the time zone database has it.
 *
 * @param zone IANA zone that the engine knows
 * @param instant [ms since 1970-01-01 UTC], any that a date can hold
 * @returns offset [ms], negative west of Greenwich
 * @throws RangeError for a zone that the engine does not know, or an instant that is no date
 *
 * Source: ECMA-402, 9th edition (2022), 11.5.6: `longOffset` gives hours, minutes and, where there are some, seconds.
 * @example zoneOffset('Europe/Lisbon', Date.UTC(2027, 6, 1)) // 3600000
 */
export function zoneOffset(zone: string, instant: number): number {
  // The zone of whoever names none: a formatter takes longer to make than many a log takes to read.
  if (zone === 'UTC' && Math.abs(instant) <= lastDate) return 0;
  let formatter = formatters.get(zone);
  if (formatter === undefined) {
    formatter = new Intl.DateTimeFormat('en', { timeZone: zone, timeZoneName: 'longOffset' });
    formatters.set(zone, formatter);
  }
  const [, sign, hours, minutes, seconds = 0] = offsetInWords.exec(formatter.format(instant)) ?? [];
  if (sign === undefined) return 0;
  return (sign === '-' ? -1000 : 1000) * ((Number(hours) * 60 + Number(minutes)) * 60 + Number(seconds));
}
