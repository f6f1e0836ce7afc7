import { describe, expect, it } from 'vitest';
import { compensationBound } from './compensationBound.js';

describe('compensationBound', () => {
  // EN 54-7:2001, 4.8, EN 54-12 believed the same (from memory): 1.6 times in decibels, not in percent
  it.each([
    [35, 1.87086643357144, 2.99338629371431, 49.8048945855367],
    [50, 3.01029995663981, 4.8164799306237, 67.0123022306776],
  ])('from %d %%', (initial, initialDecibels, limitDecibels, limitPercent) => {
    const bound = compensationBound(initial);
    expect(Math.abs(bound.initialDecibels - initialDecibels)).toBeLessThanOrEqual(2e-9);
    expect(Math.abs(bound.limitDecibels - limitDecibels)).toBeLessThanOrEqual(3e-9);
    expect(Math.abs(bound.limitPercent - limitPercent)).toBeLessThanOrEqual(5e-8);
  });
});
