import { clockStretch } from '../clocks/index.js';

/** A time as a person wrote it: the instant [ms since 1970-01-01 UTC], or why it is none. */
export type WrittenTime = { readonly instant: number } | { readonly why: 'unreadable' | 'clock-change' };

/** ISO 8601, extended or basic; behind an offset the zone may be named as well (RFC 9557), which then adds nothing. */
const dateAndTime =
  /^(\d{4})(-?)(\d\d)\2(\d\d)[T ](\d\d)(?:(:?)(\d\d)(?:\6(\d\d)(?:[.,](\d{1,9}))?)?)?(?:(Z|[+-]\d\d(?::?[0-5]\d)?)(?:\[[^\]]*\])*)?$/i;

/**
 * Reads a date and time by ISO 8601. Without an offset it is local time in a zone; a local time that the change of
 * the clock leaves out, or brings twice, is no instant.
 *
 * @param text the time as written, with date and at least the hour
 * @param timeZone IANA zone for a time without an offset
 * @example instantOf('2027-03-02T09:00:00Z', 'UTC') // { instant: 1803978000000 }
 */
export function instantOf(text: string, timeZone: string): WrittenTime {
  const [, year, , month, date, hours, , minutes = '00', seconds = '00', fraction = '0', offset] =
    dateAndTime.exec(text) ?? [];
  const written = `${year}-${month}-${date}T${hours}:${minutes}:${seconds}`;
  const clock = Date.parse(`${written}Z`);
  // What no calendar or clock shows (30 February, 24:00) is either no date or comes back as another.
  if (Number.isNaN(clock) || !new Date(clock).toISOString().startsWith(written)) return { why: 'unreadable' };
  const time = clock + Math.floor(Number(`0.${fraction}`) * 1000);
  if (offset !== undefined) return { instant: time - offsetOf(offset) };
  const stretch = clockStretch(timeZone, time);
  return stretch.kind === 'plain' ? { instant: time - stretch.offset } : { why: 'clock-change' };
}

/** `Z`, `+01`, `+0100` or `+01:00` [ms]. */
function offsetOf(text: string): number {
  const [, sign, hours, minutes = 0] = /([+-])(\d\d):?(\d\d)?/.exec(text) ?? [];
  return sign === undefined ? 0 : (sign === '-' ? -60_000 : 60_000) * (Number(hours) * 60 + Number(minutes));
}
