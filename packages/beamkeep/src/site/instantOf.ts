import { getISO } from 'temporal-polyfill/fns/Calendar';
import { fromString as instantFrom } from 'temporal-polyfill/fns/Instant';
import { fromString as localFrom, toZonedDateTime } from 'temporal-polyfill/fns/PlainDateTime';

/** A time as a person wrote it: the instant [ms since 1970-01-01 UTC], or why it is none. */
export type WrittenTime = { readonly instant: number } | { readonly why: 'unreadable' | 'clock-change' };

const dateAndTime = /^[+-]?\d{4,6}-?\d{2}-?\d{2}[T ]\d{2}/i;

/**
 * Reads a date and time by ISO 8601. Without an offset it is local time in a zone; a local time that the change of
 * the clock leaves out, or brings twice, is no instant.
 *
 * @param text the time as written, with date and at least the hour
 * @param timeZone IANA zone for a time without an offset
 * @example instantOf('2027-03-02T09:00:00Z', 'UTC') // { instant: 1803978000000 }
 */
export function instantOf(text: string, timeZone: string): WrittenTime {
  if (!dateAndTime.test(text)) return { why: 'unreadable' };
  const exact = attempt(() => instantFrom(text));
  if (exact) return { instant: exact.epochMilliseconds };
  const local = attempt(() => localFrom(text, getISO));
  if (!local) return { why: 'unreadable' };
  const zoned = attempt(() => toZonedDateTime(local, timeZone, { disambiguation: 'reject' }));
  return zoned ? { instant: zoned.epochMilliseconds } : { why: 'clock-change' };
}

function attempt<T>(read: () => T): T | undefined {
  try {
    return read();
  } catch (e) {
    if (e instanceof RangeError) return undefined;
    throw e;
  }
}
