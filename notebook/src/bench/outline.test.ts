import { minute, type Trace } from 'beamkeep/columns';
import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { outline } from './outline.js';
import { testTrace } from './testTrace.js';

/** A trace of single samples, a minute apart unless times are given. */
const samples = (level: readonly number[], time = level.map((_, row) => row * minute)): Trace => testTrace(time, level);

describe('outline', () => {
  it('draws every sample where they are few', () => {
    const { time, level } = outline(samples([1, 0.5, 1]), 0, 2 * minute, 10, 5 * minute);
    expect([...time]).toEqual([0, minute, 2 * minute]);
    expect([...level]).toEqual([1, 0.5, 1]);
  });

  it('breaks the line at a gap', () => {
    const trace = samples([1, 1, 1], [0, minute, 20 * minute]);
    expect([...outline(trace, 0, 20 * minute, 10, 5 * minute).level]).toEqual([1, 1, Number.NaN, 1]);
    expect([...outline(trace, 0, 20 * minute, 10, Number.POSITIVE_INFINITY).level]).toEqual([1, 1, 1]);
  });

  it('shows the range of a quiet minute as a stroke', () => {
    const trace: Trace = { ...samples([0.9]), until: Float64Array.of(58_000), count: Uint32Array.of(59) };
    const wide = { ...trace, low: Float32Array.of(0.875), high: Float32Array.of(0.9375) };
    const { time, level } = outline(wide, 0, minute, 10, minute);
    expect([...time]).toEqual([0, 29_000, 29_000, 58_000]);
    expect([...level]).toEqual([0.9, 0.875, 0.9375, 0.9]);
  });

  it('an empty trace is an empty line', () => {
    expect(outline(samples([]), 0, minute, 10, minute).time.length).toBe(0);
  });

  it('law: a dip of one sample is never lost, and the line is of bounded length', () => {
    fc.assert(
      fc.property(fc.integer({ min: 0, max: 9999 }), fc.integer({ min: 2, max: 200 }), (at, buckets) => {
        const level = new Array<number>(10_000).fill(1);
        level[at] = 0.25;
        const drawn = outline(samples(level), 0, 9999 * minute, buckets, 5 * minute);
        expect(Math.min(...drawn.level)).toBe(0.25);
        expect(drawn.time[drawn.level.indexOf(0.25)]).toBe(at * minute);
        expect(drawn.time.length).toBeLessThanOrEqual(2 * (buckets + 2));
      }),
      { seed: 7, numRuns: 50 },
    );
  });

  it('law: instants never fall', () => {
    fc.assert(
      fc.property(fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 300 }), (level) => {
        const { time } = outline(samples(level), 0, level.length * minute, 20, 5 * minute);
        for (let i = 1; i < time.length; i++) expect(time[i]).toBeGreaterThanOrEqual(time[i - 1] as number);
      }),
      { seed: 7, numRuns: 100 },
    );
  });
});
