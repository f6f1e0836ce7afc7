import { describe, expect, it } from 'vitest';
import { evenWeek, weeks, weekWithRest } from './soilingWeek.js';

describe('weekWithRest', () => {
  const clock = weekWithRest(2, 2); // rests on Saturday and Sunday: 1970 began on a Thursday
  it('counts seven days a week', () => {
    for (const week of weeks) expect(week(14) - week(7)).toBeCloseTo(7, 12);
  });
  it('counts little on days of rest', () => {
    expect(clock(3) - clock(2)).toBeCloseTo(0.15 * (clock(1) - clock(0)), 12);
    expect(clock(4) - clock(2)).toBeCloseTo(2 * (clock(3) - clock(2)), 12);
  });
  it('knows which day it is long after 1970, and before', () => {
    const saturday = Date.UTC(2027, 0, 2) / 86_400_000;
    expect(clock(saturday + 1) - clock(saturday)).toBeLessThan(0.2);
    expect(clock(-5 + 1) - clock(-5)).toBeLessThan(0.2); // Saturday, 27 December 1969
  });
  it('runs evenly through a day', () => expect(clock(0.25) - clock(0)).toBeCloseTo((clock(1) - clock(0)) / 4, 12));
  it('is days themselves in a week without rest', () => expect(evenWeek(5.5)).toBe(5.5));
});
