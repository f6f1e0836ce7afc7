import { describe, expect, it } from 'vitest';
import { accuracy, type Outcome, outcomes } from './accuracy.js';
import { type GrowthLaw, growthLaws, type Kind, kinds } from './dirtSeries.js';

/*
 * How far the forecast day may be off, as a share of the time left, whichever law dirt follows. Floors stand above what
 * wandering rates and bursts leave open in principle; 30 series a kind tell a median error only to about a third of
 * itself. `npm run evaluate:forecast` prints the whole table.
 */
const most: Record<GrowthLaw, Record<Kind, number>> = {
  decibels: { linear: 0.15, 'work-day': 0.15, saturating: 0.35, bursts: 0.5 },
  obscuration: { linear: 0.22, 'work-day': 0.22, saturating: 0.3, bursts: 0.6 },
};
const count = 30;

describe('forecastMargin', () => {
  const both: Outcome[] = [];
  for (const law of growthLaws) {
    const all = kinds.map((kind) => ({ kind, ...outcomes(kind, law, count) }));
    const comes = all.flatMap((one) => one.comes);
    both.push(...comes);
    for (const { kind, comes } of all) {
      it(`tells the day for ${kind} dirt that grows in ${law}`, () =>
        expect(accuracy(comes).error.value).toBeLessThanOrEqual(most[law][kind]));
    }
    it(`holds four true days in five between low and high where dirt grows in ${law}`, () => {
      const { coverage } = accuracy(comes);
      expect(coverage.limits[1]).toBeGreaterThan(0.8);
      expect(coverage.limits[0]).toBeLessThan(0.88);
    });
    it(`leaves few days without a forecast and forecasts few that never come where dirt grows in ${law}`, () => {
      expect(accuracy(comes).missing).toBeLessThanOrEqual(0.06 * comes.length);
      const sum = (key: 'never' | 'needless'): number => all.reduce((total, one) => total + one[key], 0);
      expect(sum('needless')).toBeLessThanOrEqual(0.7 * sum('never'));
    });
  }
  it('is off by less than three quarters of what a straight line is, over all kinds and both laws', () => {
    const { error, lineError } = accuracy(both);
    expect(error.value).toBeLessThan(0.75 * lineError.value);
  });
});
