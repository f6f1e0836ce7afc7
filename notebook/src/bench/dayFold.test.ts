import { hour, type Trace } from 'beamkeep/columns';
import { describe, expect, it } from 'vitest';
import { dayFold } from './dayFold.js';
import { siteZone } from './siteZone.js';
import { testTrace } from './testTrace.js';

/** One sample an hour from a start on, the level being the hour of the day in UTC divided by 100. */
function hourly(start: number, hours: number): Trace {
  const time = Array.from({ length: hours }, (_, i) => start + i * hour);
  return testTrace(
    time,
    time.map((instant) => new Date(instant).getUTCHours() / 100),
  );
}

describe('dayFold', () => {
  it('stands each hour in its row and each date in its column', () => {
    const { dates, rows, level } = dayFold(hourly(Date.UTC(2027, 0, 4), 48), siteZone('UTC'), 24);
    expect(dates).toEqual(['2027-01-04', '2027-01-05']);
    expect(rows).toBe(24);
    expect(level[7 * 2]).toBeCloseTo(0.07);
    expect(level[23 * 2 + 1]).toBeCloseTo(0.23);
  });

  it("goes by the site's clock", () => {
    const { dates, level } = dayFold(hourly(Date.UTC(2027, 6, 4, 23), 2), siteZone('Europe/Lisbon'), 24);
    expect(dates).toEqual(['2027-07-05']);
    expect(level[0]).toBeCloseTo(0.23);
    expect(level[1]).toBeCloseTo(0);
    expect(level[2]).toBeNaN();
  });

  it('on the day of the change the hour left out is empty and the hour shown twice is averaged', () => {
    const zone = siteZone('Europe/Lisbon');
    expect(dayFold(hourly(Date.UTC(2027, 2, 28), 23), zone, 24).level[1]).toBeNaN();
    expect(dayFold(hourly(Date.UTC(2027, 9, 30, 23), 25), zone, 24).level[1]).toBeCloseTo(0.005);
  });

  it('an empty trace folds to nothing', () => {
    expect(dayFold(hourly(0, 0), siteZone('UTC'), 24).dates).toEqual([]);
  });
});
