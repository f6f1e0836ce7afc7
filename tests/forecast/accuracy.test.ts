import { describe, expect, it } from 'vitest';
import { wilson } from '../evaluation/uncertainty.js';
import { accuracy } from './accuracy.js';
import { type Kind, kinds } from './dirtSeries.js';

/*
 * How far the forecast day may be off, as a share of the time left. Floors stand above what wandering rates and bursts
 * leave open in principle; 40 series a kind tell a median error only to about a quarter of itself.
 */
const most: Record<Kind, number> = { linear: 0.14, 'work-day': 0.14, saturating: 0.3, bursts: 0.55 };
const count = 40;

describe('forecastMargin', () => {
  const all = new Map(kinds.map((kind) => [kind, accuracy(kind, count)]));
  for (const kind of kinds) {
    it(`tells the day for ${kind} dirt`, () => expect(all.get(kind)?.error).toBeLessThanOrEqual(most[kind]));
  }
  it('is off by less than three quarters of what a straight line is, over all kinds', () => {
    const sum = (key: 'error' | 'lineError'): number => [...all.values()].reduce((total, one) => total + one[key], 0);
    expect(sum('error')).toBeLessThan(0.75 * sum('lineError'));
  });
  it('holds four true days in five between low and high', () => {
    const sum = (key: 'inside' | 'forecast'): number => [...all.values()].reduce((total, one) => total + one[key], 0);
    const [low, high] = wilson(sum('inside'), sum('forecast'));
    expect(low).toBeLessThan(0.8 + 0.05);
    expect(high).toBeGreaterThan(0.8);
  });
  it('leaves few days without a forecast and forecasts few that never come', () => {
    const { n, forecast } = all.get('linear') ?? { n: 0, forecast: 0 };
    expect(forecast).toBeGreaterThanOrEqual(0.95 * n);
    const { never, needless } = all.get('saturating') ?? { never: 0, needless: 0 };
    expect(needless).toBeLessThanOrEqual(0.6 * never);
  });
});
