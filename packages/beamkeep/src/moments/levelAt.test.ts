import { describe, expect, it } from 'vitest';
import type { Trace } from '../columns/index.js';
import { extremes, levelAt } from './levelAt.js';

/** Samples each 10 s, the third row a quiet minute in one, then a gap. */
const trace: Trace = {
  time: Float64Array.of(0, 10_000, 20_000, 80_000, 500_000),
  until: Float64Array.of(0, 10_000, 70_000, 80_000, 500_000),
  level: Float64Array.of(1, 0.9, 0.8, 0.7, 1),
  low: Float32Array.of(1, 0.9, 0.75, 0.7, 1),
  high: Float32Array.of(1, 0.9, 0.875, 0.7, 1),
  spread: new Float32Array(5),
  count: Uint32Array.of(1, 1, 6, 1, 1),
};
const at = (instant: number) => levelAt(trace, instant, 10);

describe('levelAt', () => {
  it('is the last sample that began before', () => {
    expect([at(0), at(9999), at(10_000), at(19_000)]).toEqual([1, 1, 0.9, 0.9]);
    expect([at(45_000), at(75_000), at(80_000)]).toEqual([0.8, 0.8, 0.7]);
  });
  it('holds for five intervals, before as well as after a gap', () => {
    expect([at(130_000), at(450_000)]).toEqual([0.7, 1]);
    expect([at(130_001), at(449_999), at(-50_001), at(550_001)]).toEqual([NaN, NaN, NaN, NaN]);
  });
  it('is missing of an empty log', () => {
    const empty = { ...trace, time: new Float64Array(0), until: new Float64Array(0) };
    expect(levelAt(empty, 0, 10)).toBeNaN();
  });
});

describe('extremes', () => {
  it('are those of every row with a sample between, both ends included', () => {
    expect(extremes(trace, 10_000, 20_000)).toEqual({ low: 0.75, high: Math.fround(0.9) });
    expect(extremes(trace, 0, 500_000)).toEqual({ low: Math.fround(0.7), high: 1 });
  });
  it('are missing where no sample lies between', () =>
    expect(extremes(trace, 90_000, 400_000)).toEqual({ low: NaN, high: NaN }));
});
