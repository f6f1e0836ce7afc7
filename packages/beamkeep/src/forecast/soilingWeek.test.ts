import { describe, expect, it } from 'vitest';
import { evenWeek, weeks, weekWithRest } from './soilingWeek.js';

describe('weekWithRest', () => {
  const clock = weekWithRest(2, 2); // rests on Saturday and Sunday: 1970 began on a Thursday
  it('counts seven days a week, rising without a step through every midnight', () => {
    for (const week of weeks)
      for (let midnight = 1; midnight <= 14; midnight++) {
        expect(week(midnight) - week(midnight - 1e-9)).toBeCloseTo(0, 7);
        expect(week(midnight) - week(midnight - 1)).toBeGreaterThan(0.1);
        expect(week(midnight) - week(midnight - 7)).toBeCloseTo(7, 12);
      }
  });
  it('counts 1.32 days for one of work, and 0.198 for each of two of rest', () => {
    const passed = [0, 1, 2, 3, 4, 5, 6].map((weekday) => clock(weekday + 1) - clock(weekday));
    for (const [weekday, counted] of passed.entries())
      expect(counted).toBeCloseTo((weekday === 2 || weekday === 3 ? 0.15 : 1) * (7 / 5.3), 12);
  });
  it('a rest may begin on any day, and go over the end of the week that is counted', () => {
    const resting = (first: number, rest: number) =>
      [0, 1, 2, 3, 4, 5, 6].filter((weekday) => {
        const week = weekWithRest(first, rest);
        return week(weekday + 1) - week(weekday) < 0.5;
      });
    expect(resting(0, 1)).toEqual([0]);
    expect(resting(6, 1)).toEqual([6]);
    expect(resting(6, 2)).toEqual([0, 6]);
    expect(resting(4, 2)).toEqual([4, 5]);
  });
  it('every week is thought of: none, or one or two days of rest from each weekday on', () => {
    const rests = weeks.map((week) =>
      [0, 1, 2, 3, 4, 5, 6].map((at) => (week(at + 1) - week(at) < 0.5 ? 'r' : 'w')).join(''),
    );
    expect(new Set(rests).size).toBe(15);
    expect(rests[0]).toBe('wwwwwww');
    expect(rests.filter((week) => week.split('r').length === 2)).toHaveLength(7);
    expect(rests.filter((week) => week.split('r').length === 3)).toHaveLength(7);
  });
  it('knows which day it is long after 1970, and before', () => {
    const saturday = Date.UTC(2027, 0, 2) / 86_400_000;
    expect(clock(saturday + 1) - clock(saturday)).toBeLessThan(0.2);
    expect(clock(-5 + 1) - clock(-5)).toBeLessThan(0.2); // Saturday, 27 December 1969
  });
  it('runs evenly through a day', () => expect(clock(5.25) - clock(5)).toBeCloseTo((clock(6) - clock(5)) / 4, 12));
  it('is days themselves in a week without rest', () => expect(evenWeek(5.5)).toBe(5.5));
});
