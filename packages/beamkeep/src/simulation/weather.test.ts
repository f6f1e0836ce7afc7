import { describe, expect, it } from 'vitest';
import { day } from '../columns/index.js';
import { roofHeat, weather } from './weather.js';

const climate = { mean: 15, season: 8, daily: 10, fronts: 2, cloud: 0.4, mood: 2, dryness: 5 };
const year = (latitude: number) => weather(climate, latitude, 10, 3, Date.UTC(2027, 0, 1), Date.UTC(2027, 11, 31));
const mean = (values: Float64Array) => values.reduce((sum, value) => sum + value, 0) / values.length;
const month = ({ start, step, values }: { start: number; step: number; values: Float64Array }, k: number) =>
  mean(values.subarray((Date.UTC(2027, k, 1) - start) / step, (Date.UTC(2027, k + 1, 1) - start) / step));

describe('weather', () => {
  const north = year(45);

  it('is warm in July in the north and in January in the south', () => {
    expect(month(north.air, 6) - month(north.air, 0)).toBeGreaterThan(8);
    const south = year(-35);
    expect(month(south.air, 0) - month(south.air, 6)).toBeGreaterThan(8);
  });

  it('has the mean that the climate says, within its fronts', () => {
    expect(Math.abs(mean(north.air.values) - climate.mean)).toBeLessThan(2);
  });

  it('has no sunshine while the sun is down, and a quarter of the clear sky at most under full cloud', () => {
    for (let i = 0; i < north.sunshine.values.length; i++) {
      const [up, sun, cloud] = [
        north.elevation.values[i] ?? 0,
        north.sunshine.values[i] ?? 0,
        north.cloud.values[i] ?? 0,
      ];
      if (up <= 0) expect(sun).toBe(0);
      // Kasten and Czeplak: G / G0 = 1 - 0.75 c^3.4
      if (up > 5) expect(sun / (1000 * Math.sin((up * Math.PI) / 180) ** 1.15)).toBeCloseTo(1 - 0.75 * cloud ** 3.4, 9);
    }
  });

  it('makes clear afternoons warmer than dawns', () => {
    const perDay = day / north.air.step;
    const atHour = (hour: number) => {
      let sum = 0;
      for (let d = 10; d < 300; d++) sum += north.air.values[Math.round((d + hour / 24) * perDay)] ?? 0;
      return sum / 290;
    };
    expect(atHour(14) - atHour(4)).toBeGreaterThan(2);
  });

  it('makes a roof as much warmer as the sun shines on it', () => {
    const roof = roofHeat(north, 0.02);
    const i = north.sunshine.values.indexOf(Math.max(...north.sunshine.values));
    expect((roof.values[i] ?? 0) - (north.air.values[i] ?? 0)).toBeCloseTo(0.02 * (north.sunshine.values[i] ?? 0), 9);
  });

  it('is the same again from the same seed', () => {
    expect(year(45).cloud.values).toEqual(north.cloud.values);
  });
});
