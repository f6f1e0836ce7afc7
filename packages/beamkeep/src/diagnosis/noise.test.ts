import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { at, chanceOf, recordOf } from '../../../../tests/diagnosis/kit.js';
import { courseNoise, sampleNoise } from './noise.js';

describe('sampleNoise', () => {
  it('law: is the spread that was put in, whatever slow change lies under it', () =>
    fc.assert(
      fc.property(fc.double({ min: 3e-4, max: 0.02, noNaN: true }), fc.integer({ min: 1, max: 99 }), (noise, seed) => {
        const { trace } = recordOf((t) => 1 - 0.3 * Math.sin((t - at(0)) / 1e9), {
          days: 8,
          intervalSeconds: 300,
          noise,
          seed,
        });
        expect(sampleNoise(trace, 0) / noise).toBeGreaterThan(0.85);
        expect(sampleNoise(trace, 0) / noise).toBeLessThan(1.15);
      }),
      { seed: 1, numRuns: 20 },
    ));
  it('does not collapse on a coarse scale: never under its step over the root of twelve', () => {
    const { trace } = recordOf(() => 0.9, { days: 4, noise: 0.001, quantum: 0.01 });
    expect(sampleNoise(trace, 0.01)).toBeGreaterThanOrEqual(0.01 / Math.sqrt(12));
  });
  it('counts no events', () => {
    const { trace } = recordOf((t) => (chanceOf(Math.floor(t / 3e5)) < 0.05 ? 0.5 : 1), { days: 8, noise: 0.002 });
    expect(sampleNoise(trace, 0)).toBeLessThan(0.003);
  });
});

describe('courseNoise', () => {
  const series = (slope: number) =>
    Float64Array.from({ length: 2000 }, (_, i) => slope * i + 0.3 * (chanceOf(i) - 0.5));
  // Evenly spread over 0.3: standard deviation 0.0866; a median of absolute second differences reads it near that.
  it('is the spread about the course, and a slope does not count', () => {
    expect(courseNoise(series(0), 0)).toBeCloseTo(0.0866, 1);
    expect(courseNoise(series(0.01), 0)).toBeCloseTo(courseNoise(series(0), 0), 10);
  });
  it('is the floor where little is seen, and never under it', () => {
    expect(courseNoise(new Float64Array(3), 0.2)).toBe(0.2);
    expect(courseNoise(series(0), 5)).toBe(5);
  });
  it('leaves missing values out', () => {
    const holed = series(0).map((v, i) => (i % 10 === 0 ? Number.NaN : v));
    expect(courseNoise(holed, 0)).toBeCloseTo(0.0866, 1);
  });
});
