import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { clockChanges } from './clockChanges.js';

const [from, to] = [Date.UTC(2020, 0, 1), Date.UTC(2031, 0, 1)];

/** The same, by a calendar library. */
function changesOf(zone: string): number[] {
  const instants: number[] = [];
  let at = Temporal.Instant.fromEpochMilliseconds(from).toZonedDateTimeISO(zone).getTimeZoneTransition('next');
  for (; at !== null && at.epochMilliseconds <= to; at = at.getTimeZoneTransition('next'))
    instants.push(at.epochMilliseconds);
  return instants;
}

describe('clockChanges', () => {
  // Directive 2000/84/EC: summer time from 01:00 UTC on the last Sunday of March to that of October.
  it('are two a year in Lisbon', () =>
    expect(clockChanges('Europe/Lisbon', Date.UTC(2027, 0, 1), Date.UTC(2028, 0, 1))).toEqual([
      { instant: Date.UTC(2027, 2, 28, 1), before: 0, after: 3_600_000 },
      { instant: Date.UTC(2027, 9, 31, 1), before: 3_600_000, after: 0 },
    ]));
  it('are none in UTC', () => expect(clockChanges('UTC', from, to)).toEqual([]));
  it('belong to a stretch that ends with one, not to one that begins with it', () => {
    const change = Date.UTC(2027, 2, 28, 1);
    expect(clockChanges('Europe/Lisbon', change - 1, change)).toHaveLength(1);
    expect(clockChanges('Europe/Lisbon', change - 1, change - 0.5)).toHaveLength(0);
    expect(clockChanges('Europe/Lisbon', change, change + 1)).toHaveLength(0);
  });
  // Morocco goes back for the month of fasting: its two changes lie closest.
  it.each([
    'Europe/Lisbon',
    'America/Santiago',
    'Australia/Lord_Howe',
    'Africa/Casablanca',
    'Asia/Gaza',
    'Africa/Cairo',
  ])('law: in %s they are those of a calendar library', (zone) =>
    expect(clockChanges(zone, from, to).map(({ instant }) => instant)).toEqual(changesOf(zone)),
  );
});
