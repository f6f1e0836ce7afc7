import { describe, expect, it } from 'vitest';
import { poissonInterval } from './poissonInterval.js';

describe('poissonInterval', () => {
  // Garwood, Biometrika 28, 1936, 95 % limits as usually tabled (from memory)
  it.each([
    [0, 0, 3.689],
    [1, 0.0253, 5.572],
    [2, 0.242, 7.225],
    [5, 1.623, 11.668],
    [10, 4.795, 18.39],
    [20, 12.217, 30.888],
  ])('a count of %d', (count, low, high) => {
    const interval = poissonInterval(count);
    expect(Math.abs(interval.low - low)).toBeLessThanOrEqual(0.0005);
    expect(Math.abs(interval.high - high)).toBeLessThanOrEqual(0.0005);
  });

  it('law: the chance of a count beyond it is the tail left out, by the plain sum of Poisson terms', () => {
    const atMost = (count: number, mean: number) => {
      let term = Math.exp(-mean);
      let sum = term;
      for (let k = 1; k <= count; k++) sum += term *= mean / k;
      return sum;
    };
    for (const count of [1, 3, 12, 40])
      for (const confidence of [0.8, 0.95]) {
        const { low, high } = poissonInterval(count, confidence);
        expect(atMost(count, high)).toBeCloseTo((1 - confidence) / 2, 9);
        expect(1 - atMost(count - 1, low)).toBeCloseTo((1 - confidence) / 2, 9);
      }
  });
});
