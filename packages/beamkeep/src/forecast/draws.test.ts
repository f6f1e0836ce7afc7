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
  describe('gamma draws follow their distribution, not its first moments alone', () => {
    /** Largest distance between the share of draws below a place and what the distribution says there. */
    const distance = (draw: () => number, share: (at: number) => number, count = 40_000): number => {
      const values = Float64Array.from({ length: count }, draw).sort();
      return values.reduce(
        (most, at, row) => Math.max(most, Math.abs(share(at) - row / count), Math.abs(share(at) - (row + 1) / count)),
        0,
      );
    };
    const exponential = (at: number): number => 1 - Math.exp(-at);
    const most = 1.63 / Math.sqrt(40_000); // Kolmogorov and Smirnov, one in a hundred (from memory)
    it('of shape 1: exponential', () => {
      const draw = draws(4);
      expect(distance(() => draw.gamma(1, 1), exponential)).toBeLessThan(most);
    });
    it('of shape 2: the sum of two exponentials', () => {
      const draw = draws(5);
      expect(
        distance(
          () => draw.gamma(2, 2),
          (at) => 1 - (1 + at) * Math.exp(-at),
        ),
      ).toBeLessThan(most);
    });
    it('of shape 1/2: two of them make an exponential', () => {
      const draw = draws(6);
      expect(distance(() => draw.gamma(0.5, 0.5) + draw.gamma(0.5, 0.5), exponential)).toBeLessThan(most);
    });
    it('in any unit: mean and variance ask for shape and scale', () => {
      const draw = draws(8);
      expect(distance(() => draw.gamma(0.3, 0.09) / 0.3, exponential)).toBeLessThan(most);
    });
  });
});
