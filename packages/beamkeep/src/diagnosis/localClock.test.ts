import { describe, expect, it } from 'vitest';
import { hour } from '../columns/index.js';
import { localClock } from './localClock.js';

describe('localClock', () => {
  const year: [number, number] = [Date.UTC(2027, 0, 1), Date.UTC(2028, 0, 1)];
  // Directive 2000/84/EC: summer time from 01:00 UTC on the last Sunday of March to that of October.
  it('changes its offset at the hours of summer time', () => {
    const clock = localClock('Europe/Lisbon', ...year);
    const spring = Date.UTC(2027, 2, 28, 1);
    const autumn = Date.UTC(2027, 9, 31, 1);
    expect([spring - 1, spring, autumn - 1, autumn].map((t) => clock.offset(t) / hour)).toEqual([0, 1, 1, 0]);
    expect(clock.hourOfDay(spring)).toBe(2);
  });
  it('knows days and weekdays, before 1970 as well', () => {
    const clock = localClock('UTC', Date.UTC(1960, 0, 1), Date.UTC(2028, 0, 1));
    expect(clock.weekday(Date.UTC(2027, 0, 4))).toBe(1);
    expect(clock.weekday(Date.UTC(1969, 11, 28))).toBe(7);
    expect(clock.dayNumber(-1)).toBe(-1);
    expect(clock.hourOfDay(-hour)).toBe(23);
  });
  it('counts local days: east of Greenwich they begin earlier', () => {
    const clock = localClock('Pacific/Auckland', ...year);
    const instant = Date.UTC(2027, 5, 1, 12);
    expect(clock.dayNumber(instant)).toBe(Math.floor(instant / (24 * hour)) + 1);
  });
});
