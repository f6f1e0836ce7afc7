import { describe, expect, it } from 'vitest';
import { draws } from './draws.js';

/** Mean and variance of many draws. */
function moments(draw: () => number, count = 40_000): [mean: number, variance: number] {
  const values = Float64Array.from({ length: count }, draw);
  const mean = values.reduce((sum, value) => sum + value, 0) / count;
  return [mean, values.reduce((sum, value) => sum + (value - mean) ** 2, 0) / count];
}

describe('draws', () => {
  it('are the same for the same seed', () => {
    const [a, b] = [draws(7), draws(7)];
    expect(Array.from({ length: 5 }, () => a.gamma(1, 2))).toEqual(Array.from({ length: 5 }, () => b.gamma(1, 2)));
  });
  it('are normal with mean 0 and spread 1', () => {
    const [mean, variance] = moments(draws(1).normal);
    expect(Math.abs(mean)).toBeLessThan(0.02); // four standard errors of 40,000 draws
    expect(Math.abs(variance - 1)).toBeLessThan(0.03);
  });
  for (const [mean, variance] of [
    [2, 1], // shape 4
    [0.01, 0.001], // shape 0.1: mostly nothing, now and then a burst
  ] as const) {
    it(`have the mean ${mean} and the variance ${variance} that are asked for`, () => {
      const draw = draws(3);
      const [m, v] = moments(() => draw.gamma(mean, variance));
      expect(Math.abs(m - mean)).toBeLessThan(4 * Math.sqrt(variance / 40_000));
      expect(Math.abs(v / variance - 1)).toBeLessThan(0.15);
    });
  }
});
