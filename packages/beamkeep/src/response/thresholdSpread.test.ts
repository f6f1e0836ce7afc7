import { describe, expect, it } from 'vitest';
import { reproducibility, thresholdRatio } from './thresholdSpread.js';

describe('thresholdRatio', () => {
  it('EN 54-7:2001, 5.2.3: largest to smallest not above 1.6', () => {
    const { ratio, limit, passes } = thresholdRatio([1.9, 2.4, 2.1, 2.9, 2.0, 2.2]);
    expect(Math.abs(ratio - 1.52631578947368)).toBeLessThanOrEqual(2e-9);
    expect([limit, passes]).toEqual([1.6, true]);
  });
  it('keeps the limit where it is just met', () => expect(thresholdRatio([1, 1.6]).passes).toBe(true));
  it('passes no threshold that is none', () => expect(thresholdRatio([-1, 2]).passes).toBe(false));
  it('fails beyond', () => expect(thresholdRatio([1, 1.61]).passes).toBe(false));
  it('passes nothing without thresholds', () => expect(thresholdRatio([]).passes).toBe(false));
});

describe('reproducibility', () => {
  it('GB 4715-2024, 5.7: largest to mean not above 1.33, mean to smallest not above 1.5', () => {
    const { mean, maxToMean, meanToMin, limits, passes } = reproducibility([2.0, 2.2, 2.1, 2.5, 1.9, 2.3, 2.1]);
    expect(Math.abs(mean - 2.15714285714286)).toBeLessThanOrEqual(3e-9);
    expect(Math.abs(maxToMean - 1.15894039735099)).toBeLessThanOrEqual(2e-9);
    expect(Math.abs(meanToMin - 1.13533834586466)).toBeLessThanOrEqual(2e-9);
    expect([limits, passes]).toEqual([[1.33, 1.5], true]);
  });
  it.each([[[1, 1, 1, 2]], [[0.5, 1, 1, 1]]])('fails where one lies too far from the mean: %j', (thresholds) =>
    expect(reproducibility(thresholds).passes).toBe(false),
  );
  it.each([
    ['largest to mean 1.33', [133, 67, 100]],
    ['mean to smallest 1.5', [2, 3.2, 3.4, 3.4]],
  ])('keeps a limit that is just met: %s', (_, thresholds) => expect(reproducibility(thresholds).passes).toBe(true));
  it('passes nothing without thresholds', () => expect(reproducibility([]).passes).toBe(false));
});
