import { describe, expect, it } from 'vitest';
import { bootstrap, poisson, wilson } from './uncertainty.js';

describe('wilson', () => {
  it('gives the closed form at none of ten: z²/(n + z²)', () => {
    const [low, high] = wilson(0, 10);
    expect(low).toBe(0);
    expect(high).toBeCloseTo(1.959964 ** 2 / (10 + 1.959964 ** 2), 9);
  });
  it('is the whole range when nothing was counted', () => expect(wilson(0, 0)).toEqual([0, 1]));
});

describe('poisson', () => {
  it('leaves 2.5 % at none counted: -ln 0.025', () => expect(poisson(0)[1]).toBeCloseTo(-Math.log(0.025), 6));
  it('leaves 2.5 % below one counted: -ln 0.975', () => expect(poisson(1)[0]).toBeCloseTo(-Math.log(0.975), 6));
  it('goes on smoothly where the normal approximation takes over', () =>
    expect((poisson(201)[1] - poisson(200)[1]) / 2).toBeLessThan(1.5));
});

describe('bootstrap', () => {
  const mean = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0) / values.length;
  it('gives the same limits for the same seed', () =>
    expect(bootstrap([1, 5, 2, 8], mean, 3)).toEqual(bootstrap([1, 5, 2, 8], mean, 3)));
  it('comes near the limits of a mean: 1.96 spreads over the root of n', () => {
    const values = Array.from({ length: 400 }, (_, row) => row / 399); // spread 0.29, so 0.5 ± 0.0283
    const [low, high] = bootstrap(values, mean);
    expect(Math.abs(low - 0.4717)).toBeLessThan(0.005);
    expect(Math.abs(high - 0.5283)).toBeLessThan(0.005);
  });
});
