import { describe, expect, it } from 'vitest';
import { day, hour } from '../columns/index.js';
import { shifts, works } from './calendar.js';
import { localClock, weekday } from './clock.js';

const monday = Date.UTC(2027, 0, 4);
const clock = localClock('Europe/Lisbon', monday - 30 * day, monday + 30 * day);

describe('shifts', () => {
  it('come on the days of the week that people work', () => {
    const found = shifts(
      { days: { week: [1, 2, 3, 4, 5] }, opens: 7, closes: 15, idle: 0 },
      1,
      clock,
      monday,
      monday + 14 * day,
    );
    expect(found.length).toBe(10);
    expect(found[0]).toEqual({ day: monday / day, from: monday + 7 * hour, to: monday + 15 * hour });
    expect(found.every((shift) => weekday(shift.day) >= 1 && weekday(shift.day) <= 5)).toBe(true);
  });

  it('may pass midnight', () => {
    const [first] = shifts({ days: { week: [0] }, opens: 22, closes: 6, idle: 0 }, 1, clock, monday, monday + day);
    expect(first).toEqual({ day: monday / day - 1, from: monday - 2 * hour, to: monday + 6 * hour });
  });

  it('follow a rota whatever the week', () => {
    const calendar = { days: { on: 4, off: 4 }, opens: 6, closes: 18, idle: 0 };
    const on = Array.from({ length: 80 }, (_, k) => works(calendar, 1, monday / day + k)).filter(Boolean).length;
    expect(on).toBe(40);
  });

  it('fall out on idle days, the same ones each time', () => {
    const calendar = { days: { week: [1, 2, 3, 4, 5] }, opens: 7, closes: 15, idle: 0.5 };
    const found = shifts(calendar, 5, clock, monday - 28 * day, monday + 28 * day);
    expect(found.length).toBeGreaterThan(8);
    expect(found.length).toBeLessThan(32);
    expect(shifts(calendar, 5, clock, monday - 28 * day, monday + 28 * day)).toEqual(found);
  });
});
