import { day, hour } from 'beamkeep/columns';
import { describe, expect, it } from 'vitest';
import { dailyLevels } from './dailyLevels.js';
import { siteZone } from './siteZone.js';
import { testTrace } from './testTrace.js';

const utc = siteZone('UTC');
const hours = (count: number): number[] => Array.from({ length: count }, (_, i) => i * hour);

describe('dailyLevels', () => {
  it('tells the median and the low of each day', () => {
    const time = hours(48);
    const trace = testTrace(
      time,
      time.map((instant) => (instant % day < 2 * hour ? 0.8 : 1) - (instant < day ? 0 : 0.1)),
    );
    const { clock, middle, low } = dailyLevels(trace, utc, []);
    expect(clock).toEqual(['1970-01-01 12:00', '1970-01-02 12:00']);
    expect([...middle]).toEqual([1, 0.9]);
    expect(low[0]).toBeCloseTo(0.8);
    expect(low[1]).toBeCloseTo(0.7);
  });

  it('leaves stretches out', () => {
    const time = hours(24);
    const trace = testTrace(
      time,
      time.map((instant) => (instant < 6 * hour ? 0.2 : 1)),
    );
    expect(dailyLevels(trace, utc, [[0, 6 * hour - 1]]).low[0]).toBe(1);
  });

  it('a day with hardly a sample tells nothing, nor does a day without', () => {
    const time = [...hours(24), 2 * day, ...hours(24).map((instant) => 3 * day + instant)];
    const { middle } = dailyLevels(
      testTrace(
        time,
        time.map(() => 1),
      ),
      utc,
      [],
    );
    expect([...middle]).toEqual([1, Number.NaN, Number.NaN, 1]);
  });

  it('nothing in, nothing out', () => {
    expect(dailyLevels(testTrace([], []), utc, []).clock).toEqual([]);
  });
});
