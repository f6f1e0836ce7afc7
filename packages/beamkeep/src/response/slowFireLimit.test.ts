import { describe, expect, it } from 'vitest';
import { slowFireLimit } from './slowFireLimit.js';

describe('slowFireLimit', () => {
  // EN 54-7:2001, 4.8, EN 54-12 believed the same (from memory)
  it.each([
    [1.87, 1.0, true, 10871.2],
    [2.0, 0.5, false, 23140.0],
  ])('threshold %d dB, %d dB/h', (threshold, rate, applies, seconds) => {
    const limit = slowFireLimit(threshold, rate);
    expect(limit.applies).toBe(applies);
    expect(Math.abs(limit.limitSeconds - seconds)).toBeLessThanOrEqual(2e-5);
  });
});
