import { describe, expect, it } from 'vitest';
import { normalNoise } from '../normalNoise.js';
import { periodogram, welch } from './welch.js';

const noise = normalNoise(73);
const white = Float64Array.from({ length: 20_000 }, () => 3 * noise());

describe('welch', () => {
  it('law: the density of white noise is its variance over half the rate, summed it is the variance', () => {
    const { frequency, power } = welch(white, { segment: 256, rate: 10 });
    const sum = power.reduce((total, value) => total + value, 0) * (frequency[1] as number);
    expect(sum).toBeGreaterThan(8.6);
    expect(sum).toBeLessThan(9.4);
    expect(frequency.at(-1)).toBe(5);
  });
  it('a line on a bin: half its squared amplitude when scaled as spectrum, holes or not', () => {
    const wave = Float64Array.from({ length: 4096 }, (_, i) => 4 * Math.cos((2 * Math.PI * i * 16) / 256));
    expect(welch(wave, { segment: 256, scaling: 'spectrum' }).power[16]).toBeCloseTo(8, 10);
    const holed = wave.map((value, i) => ((i * 7) % 11 < 2 ? Number.NaN : value));
    expect(Math.abs((welch(holed, { segment: 256, scaling: 'spectrum' }).power[16] as number) - 8)).toBeLessThan(0.3);
  });
  it('a segment with less than half of its samples is left out', () => {
    const holed = white.slice(0, 512).map((value, i) => (i < 300 ? Number.NaN : value));
    expect(welch(holed, { segment: 128, overlap: 0 }).segments).toBe(2);
  });
  it('no whole segment: no power', () => {
    const { power, segments } = welch([1, 2], { segment: 4 });
    expect(segments).toBe(0);
    expect(power[1]).toBeNaN();
    expect(periodogram([]).segments).toBe(0);
  });
  it('says what must change', () => {
    expect(() => welch([1], { segment: 0 })).toThrow('segment 0 must be a whole number');
    expect(() => welch([1], { segment: 8, overlap: 8 })).toThrow('overlap 8 must be');
  });
});

describe('periodogram', () => {
  it('law: the summed power is the mean square about the mean (Parseval), for odd and even lengths', () => {
    for (const length of [999, 1000]) {
      const values = white.subarray(0, length);
      const middle = values.reduce((sum, value) => sum + value, 0) / length;
      const square = values.reduce((sum, value) => sum + (value - middle) ** 2, 0) / length;
      const { frequency, power } = periodogram(values, 50);
      const sum = power.reduce((total, value) => total + value, 0) * (frequency[1] as number);
      expect(sum).toBeCloseTo(square, 9);
    }
  });
});
