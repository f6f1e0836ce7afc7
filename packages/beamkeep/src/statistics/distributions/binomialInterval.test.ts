import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { binomialInterval } from './binomialInterval.js';

/** Chance of at most so many successes. */
function atMost(successes: number, trials: number, share: number): number {
  let term = (1 - share) ** trials;
  let sum = 0;
  for (let k = 0; k <= successes; k++) {
    sum += term;
    term *= ((trials - k) / (k + 1)) * (share / (1 - share));
  }
  return sum;
}

describe('binomialInterval', () => {
  it('no miss in n: the low end is the n-th root of the tail', () => {
    const { low, high } = binomialInterval(10, 10);
    expect(low).toBeCloseTo(0.025 ** 0.1, 12);
    expect(high).toBe(1);
  });
  it('law: at each end the count seen is just as far out as the confidence says', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 60 }), fc.integer({ min: 1, max: 100 }), (trials, seed) => {
        const successes = 1 + (seed % (trials - 1));
        const { low, high } = binomialInterval(successes, trials, 0.9);
        expect(atMost(successes, trials, high)).toBeCloseTo(0.05, 9);
        expect(1 - atMost(successes - 1, trials, low)).toBeCloseTo(0.05, 9);
      }),
      { seed: 35 },
    );
  });
  it('nothing tried leaves everything possible', () => expect(binomialInterval(0, 0)).toEqual({ low: 0, high: 1 }));
  it('says what must change', () => expect(() => binomialInterval(3, 2)).toThrow('3 of 2 must be whole numbers'));
});
