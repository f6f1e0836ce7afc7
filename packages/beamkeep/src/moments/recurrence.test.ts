import { describe, expect, it } from 'vitest';
import { day, hour, minute } from '../columns/index.js';
import { recurrence } from './recurrence.js';

/** Monday 4 January 2027, on clocks that go with UTC. */
const monday = Date.parse('2027-01-04T00:00:00Z');
const clock = { offset: () => 0, dayNumber: (instant: number) => Math.floor(instant / day) };
const log = (days: number, holds = (_: number) => true) => ({
  from: monday,
  to: monday + days * day - 1,
  intervalSeconds: 60,
  holds,
});
const dip = (start: number, depth = 0.1, length = hour) =>
  ({ start, end: start + length, depth, sign: 1, open: false }) as const;
const at640 = 6 * hour + 40 * minute;
const tuesdays = (weeks: number) =>
  Array.from({ length: weeks }, (_, week) =>
    dip(monday + (7 * week + 1) * day + 6 * hour + 45 * minute, 0.1 + 0.01 * week),
  );
const ask = (weekday: number | undefined) => ({ timeOfDay: at640, weekday, sign: 1 }) as const;

describe('recurrence', () => {
  it('keeps to a day of the week where that day shows it and the others do not', () => {
    const told = recurrence(ask(2), tuesdays(10), log(70), clock);
    expect(told).toMatchObject({
      onWeekday: { shown: 10, of: 10 },
      onOthers: { shown: 0, of: 60 },
      keepsTo: 'weekday',
      length: hour,
    });
    expect(told.depth).toBeCloseTo(0.145, 12);
    expect(told.byWeekday[1]).toEqual({ shown: 10, of: 10 });
    expect(told.days).toHaveLength(70);
  });
  it('does not keep to another day of the week that is asked about', () =>
    expect(recurrence(ask(3), tuesdays(10), log(70), clock)).toMatchObject({
      onWeekday: { shown: 0, of: 10 },
      onOthers: { shown: 10, of: 60 },
      keepsTo: 'hour',
      depth: Number.NaN,
    }));
  it('keeps to the hour where every day shows it', () => {
    const daily = Array.from({ length: 70 }, (_, k) => dip(monday + k * day + 6 * hour + 30 * minute));
    expect(recurrence(ask(2), daily, log(70), clock).keepsTo).toBe('hour');
    expect(recurrence(ask(undefined), daily, log(70), clock)).toMatchObject({
      onWeekday: { shown: 70, of: 70 },
      onOthers: { shown: 0, of: 0 },
      keepsTo: 'hour',
    });
  });
  it('calls once or twice no habit', () => {
    expect(recurrence(ask(undefined), tuesdays(2), log(70), clock).keepsTo).toBe('seldom');
    expect(recurrence(ask(undefined), [], log(70), clock).keepsTo).toBe('never');
  });
  it('counts what covers the time or begins within half an hour of it, and no more', () => {
    const shown = (start: number, length: number) =>
      recurrence(ask(undefined), [dip(monday + start, 0.1, length)], log(1), clock).onWeekday.shown;
    expect(shown(at640 - 30 * minute, minute)).toBe(1);
    expect(shown(at640 + 30 * minute, minute)).toBe(1);
    expect(shown(at640 + 31 * minute, minute)).toBe(0);
    expect(shown(at640 - 5 * hour, 6 * hour)).toBe(1);
    expect(shown(at640 - 5 * hour, 4.9 * hour)).toBe(0);
  });
  it('leaves out days without samples then, and stretches of the other sign', () => {
    const gap = (moment: number) => moment < monday + 35 * day || moment > monday + 42 * day;
    expect(recurrence(ask(2), tuesdays(10), log(70, gap), clock).onWeekday).toEqual({ shown: 9, of: 9 });
    const gained = tuesdays(10).map((each) => ({ ...each, sign: -1 }) as const);
    expect(recurrence(ask(2), gained, log(70), clock).keepsTo).toBe('never');
  });
  it('takes the deepest of a day', () => {
    const two = [dip(monday + 6 * hour + 20 * minute, 0.3, 5 * minute), dip(monday + at640, 0.2, hour)];
    expect(recurrence(ask(undefined), two, log(1), clock).days[0]?.off?.depth).toBe(0.3);
  });
});
