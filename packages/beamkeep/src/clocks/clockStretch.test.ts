import fc from 'fast-check';
import { Temporal } from 'temporal-polyfill';
import { describe, expect, it } from 'vitest';
import { clockStretch } from './clockStretch.js';

const clock = (text: string): number => Date.parse(`${text}Z`);

describe('clockStretch', () => {
  it('an hour that Lisbon skips on 28 March 2027 (IANA tz database, rule EU)', () => {
    const stretch = clockStretch('Europe/Lisbon', clock('2027-03-28T01:30'));
    expect(stretch).toMatchObject({
      kind: 'skipped',
      from: clock('2027-03-28T01:00'),
      to: clock('2027-03-28T02:00'),
      offset: 0,
    });
  });
  it('an hour that Lisbon has twice on 31 October 2027', () => {
    const stretch = clockStretch('Europe/Lisbon', clock('2027-10-31T01:30'));
    expect(stretch).toEqual({
      kind: 'doubled',
      from: clock('2027-10-31T01:00'),
      to: clock('2027-10-31T02:00'),
      offset: 3_600_000,
      repeat: 3_600_000,
    });
  });
  it('half an hour on Lord Howe Island (rule LH)', () => {
    const stretch = clockStretch('Australia/Lord_Howe', clock('2027-04-04T01:45'));
    expect(stretch).toMatchObject({
      kind: 'doubled',
      from: clock('2027-04-04T01:30'),
      to: clock('2027-04-04T02:00'),
      repeat: 1_800_000,
    });
  });
  it('the first reading after a change belongs to what comes after it', () => {
    for (const [change, offset] of [
      ['2027-03-28T02:00', 3_600_000],
      ['2027-10-31T02:00', 0],
    ] as const) {
      expect(clockStretch('Europe/Lisbon', clock(change))).toMatchObject({
        kind: 'plain',
        from: clock(change),
        offset,
      });
    }
    expect(clockStretch('Europe/Lisbon', clock('2027-03-28T01:00')).kind).toBe('skipped');
    expect(clockStretch('Europe/Lisbon', clock('2027-10-31T01:00')).kind).toBe('doubled');
  });
  it('a zone without changes is told by the week', () => {
    const stretch = clockStretch('UTC', 0);
    expect(stretch).toMatchObject({ kind: 'plain', offset: 0 });
    expect(stretch.from).toBeLessThanOrEqual(-7 * 86_400_000);
    expect(stretch.to).toBeGreaterThan(28 * 86_400_000);
  });
  it('law: from first to last reading, stretches follow each other without a hole', () => {
    for (const zone of ['Europe/Lisbon', 'Africa/Casablanca', 'Australia/Lord_Howe']) {
      const end = clock('2029-01-01T00:00');
      for (let reading = clock('2026-01-01T00:00'); reading < end; ) {
        const { from, to } = clockStretch(zone, reading);
        expect(from).toBeLessThanOrEqual(reading);
        expect(to).toBeGreaterThan(reading);
        expect(clockStretch(zone, to - 1).to).toBeGreaterThanOrEqual(to);
        reading = to;
      }
    }
  });
  it('law: every reading of a plain stretch is turned as a calendar library turns it', () =>
    fc.assert(
      fc.property(
        fc.constantFrom(
          'Europe/Lisbon',
          'America/Chicago',
          'Australia/Lord_Howe',
          'Asia/Kolkata',
          'America/St_Johns',
          'Africa/Casablanca',
        ),
        fc.integer({ min: Date.UTC(2024, 0, 1), max: Date.UTC(2029, 0, 1) }),
        fc.double({ min: 0, max: 1, noNaN: true, maxExcluded: true }),
        (zone, reading, share) => {
          const { from, to, offset, kind, repeat } = clockStretch(zone, reading);
          expect(from <= reading && reading < to).toBe(true);
          const inside = Math.min(to - 1, Math.floor(from + share * (to - from)));
          const wall = Temporal.Instant.fromEpochMilliseconds(inside).toZonedDateTimeISO('UTC').toPlainDateTime();
          const early = wall.toZonedDateTime(zone, { disambiguation: 'earlier' }).epochMilliseconds;
          const late = wall.toZonedDateTime(zone, { disambiguation: 'later' }).epochMilliseconds;
          if (kind === 'skipped') expect(inside - offset).toBe(late);
          else expect([inside - offset, inside - offset + repeat]).toEqual([early, late]);
        },
      ),
      { seed: 3, numRuns: 300 },
    ));
});
