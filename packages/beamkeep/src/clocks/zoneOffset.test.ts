import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { zoneOffset } from './zoneOffset.js';

describe('zoneOffset', () => {
  // Directive 2000/84/EC: summer time from 01:00 UTC on the last Sunday of March.
  it('is an hour more from the first instant of summer time on', () => {
    const change = Date.UTC(2027, 2, 28, 1);
    expect([change - 1, change].map((instant) => zoneOffset('Europe/Lisbon', instant))).toEqual([0, 3_600_000]);
  });
  it.each([
    ['UTC', 2027, 0],
    ['Asia/Kolkata', 2027, 5.5 * 60],
    ['America/St_Johns', 2027, -3.5 * 60],
    // IANA tz database, file africa: Liberia kept 44 minutes and 30 seconds behind until 1972.
    ['Africa/Monrovia', 1970, -44.5],
  ])('%s at the start of %i is %d minutes', (zone, year, minutes) =>
    expect(zoneOffset(zone, Date.UTC(year, 0, 2))).toBe(minutes * 60_000),
  );
  it('refuses a zone that is none', () => expect(() => zoneOffset('Europe/Nowhere', 0)).toThrow(RangeError));
  it('law: every zone that the engine knows, as a calendar library has it, 1990 to 2037', () => {
    const different = Intl.supportedValuesOf('timeZone').filter((zone) =>
      Array.from({ length: 16 }, (_, i) => Date.UTC(1990 + 3 * i, (i * 5) % 12, 15)).some(
        (instant) =>
          zoneOffset(zone, instant) !==
          Temporal.Instant.fromEpochMilliseconds(instant).toZonedDateTimeISO(zone).offsetNanoseconds / 1e6,
      ),
    );
    expect(different).toEqual([]);
  });
});
