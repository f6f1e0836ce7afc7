import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { day, hour, minute } from '../columns/index.js';
import { localClock, weekday } from './clock.js';

const [from, to] = [Date.UTC(2027, 0, 1), Date.UTC(2028, 0, 1)];

describe('localClock', () => {
  it('puts Lisbon an hour on from 28 March to 31 October 2027, at 01:00 UTC (IANA zone data)', () => {
    const clock = localClock('Europe/Lisbon', from, to);
    expect(clock.wall(Date.UTC(2027, 2, 28, 0, 59)) - Date.UTC(2027, 2, 28, 0, 59)).toBe(0);
    expect(clock.wall(Date.UTC(2027, 2, 28, 1, 0)) - Date.UTC(2027, 2, 28, 1, 0)).toBe(hour);
    expect(clock.wall(Date.UTC(2027, 9, 31, 0, 59)) - Date.UTC(2027, 9, 31, 0, 59)).toBe(hour);
    expect(clock.wall(Date.UTC(2027, 9, 31, 1, 0)) - Date.UTC(2027, 9, 31, 1, 0)).toBe(0);
  });

  it('knows zones off by half an hour', () => {
    const clock = localClock('Asia/Kolkata', from, to);
    expect(clock.wall(from) - from).toBe(5.5 * hour);
    expect(clock.hour(from)).toBe(5.5);
  });

  it('law: an instant read off the clock and looked up again is the same, outside the doubled hour', () => {
    const clock = localClock('Australia/Adelaide', from, to);
    fc.assert(
      fc.property(fc.integer({ min: from / minute, max: to / minute - 1 }), (minutes) => {
        const instant = minutes * minute;
        const doubled = clock.wall(instant - hour) === clock.wall(instant);
        expect(doubled || clock.instant(clock.wall(instant)) === instant).toBe(true);
      }),
      { seed: 1 },
    );
  });

  it('counts local days', () => {
    const clock = localClock('Pacific/Auckland', from, to);
    expect(clock.day(Date.UTC(2027, 0, 4, 12))).toBe(Date.UTC(2027, 0, 5) / day);
  });

  it('knows the day of the week: 4 January 2027 is a Monday', () => {
    expect(weekday(Date.UTC(2027, 0, 4) / day)).toBe(1);
    expect(weekday(Date.UTC(1969, 11, 28) / day)).toBe(0);
  });
});
