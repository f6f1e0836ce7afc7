import { day, hour } from 'beamkeep/columns';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { siteZone } from './siteZone.js';

const lisbon = siteZone('Europe/Lisbon');

describe('siteZone', () => {
  it('tells winter and summer time', () => {
    expect(lisbon.wall(Date.UTC(2027, 0, 4, 8, 30))).toBe('2027-01-04 08:30:00.000');
    expect(lisbon.wall(Date.UTC(2027, 6, 4, 8, 30))).toBe('2027-07-04 09:30:00.000');
  });

  it('both daylight-saving changes: the hour left out and the hour shown twice', () => {
    const spring = Date.UTC(2027, 2, 28, 1);
    expect(lisbon.wall(spring - 1)).toBe('2027-03-28 00:59:59.999');
    expect(lisbon.wall(spring)).toBe('2027-03-28 02:00:00.000');
    expect(lisbon.instant('2027-03-28 01:30')).toBe(spring + hour / 2);
    const autumn = Date.UTC(2027, 9, 31, 1);
    expect(lisbon.wall(autumn)).toBe('2027-10-31 01:00:00.000');
    expect(lisbon.instant('2027-10-31 01:30:00')).toBe(autumn - hour / 2);
  });

  it('knows whether the clocks change in between', () => {
    expect(lisbon.changes(Date.UTC(2027, 0, 1), Date.UTC(2027, 2, 1))).toBe(false);
    expect(lisbon.changes(Date.UTC(2027, 2, 27), Date.UTC(2027, 2, 29))).toBe(true);
    expect(siteZone('UTC').changes(0, 400 * day)).toBe(false);
  });

  it('no time, no instant', () => {
    expect(lisbon.instant('tomorrow')).toBeNaN();
    expect(lisbon.wall(Number.NaN)).toBe('');
  });

  it('law: there and back, but for the hour shown twice', () => {
    for (const name of ['Europe/Lisbon', 'America/St_Johns', 'Australia/Lord_Howe', 'Asia/Kathmandu', 'UTC']) {
      const zone = siteZone(name);
      fc.assert(
        fc.property(fc.integer({ min: Date.UTC(1990, 0), max: Date.UTC(2040, 0) }), (instant) => {
          const back = zone.instant(zone.wall(instant));
          expect(zone.wall(back)).toBe(zone.wall(instant));
          expect(instant - back).toBeGreaterThanOrEqual(0);
          expect(instant - back).toBeLessThanOrEqual(hour);
        }),
        { seed: 7, numRuns: 300 },
      );
    }
  });
});
