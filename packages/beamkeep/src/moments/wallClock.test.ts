import { describe, expect, it } from 'vitest';
import { hour } from '../columns/index.js';
import { instantOnDay, timeOfDayAt, wallTime, weekdayOf } from './wallClock.js';

/** Clocks that go an hour forward at a change, as Lisbon's on 28 March 2027. */
const change = Date.parse('2027-03-28T01:00:00Z');
const clock = {
  offset: (instant: number) => (instant < change ? 0 : hour),
  dayNumber(instant: number) {
    return Math.floor((instant + this.offset(instant)) / (24 * hour));
  },
};

describe('the clocks of a site', () => {
  it('1 January 1970 was a Thursday, 16 March 2027 a Tuesday', () => {
    expect(weekdayOf(0)).toBe(4);
    expect(weekdayOf(clock.dayNumber(Date.parse('2027-03-16T12:00:00Z')))).toBe(2);
    expect(weekdayOf(-1)).toBe(3);
  });
  it('law: the instant on a day at a time of day shows that time on that day, but for the skipped hour', () => {
    for (let day = clock.dayNumber(change) - 2; day < clock.dayNumber(change) + 3; day++)
      for (let h = 2; h < 24; h++) {
        const instant = instantOnDay(clock, day, h * hour);
        expect([clock.dayNumber(instant), timeOfDayAt(clock, instant)]).toEqual([day, h * hour]);
      }
  });
  it('tells an instant to the minute', () =>
    expect(wallTime(clock, Date.parse('2027-05-04T05:22:31Z'))).toBe('2027-05-04 06:22'));
});
