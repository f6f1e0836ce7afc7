import { describe, expect, it } from 'vitest';
import { dot, rangeOf, raster } from './raster.js';

const of = (low: number[], middle: number[]) => ({
  from: 0,
  to: 1,
  step: 1,
  low: Float64Array.from(low),
  middle: Float64Array.from(middle),
});

describe('raster', () => {
  it('fills up to the least sample and marks the median', () => {
    const { dots } = raster(of([0.3, 0.7, Number.NaN], [0.7, 0.9, Number.NaN]), { top: 1, bottom: 0 }, 5);
    const rows = [0, 1, 2, 3, 4].map((row) => [...dots.subarray(row * 3, row * 3 + 3)]);
    expect(rows).toEqual([
      [dot.empty, dot.middle, dot.empty],
      [dot.middle, dot.light, dot.empty],
      [dot.empty, dot.light, dot.empty],
      [dot.light, dot.light, dot.empty],
      [dot.light, dot.light, dot.empty],
    ]);
  });
  it('leaves a column empty where the level fell below the plot', () => {
    const { dots } = raster(of([0.1], [0.85]), { top: 1, bottom: 0.6 }, 4);
    expect([...dots]).toEqual([dot.empty, dot.middle, dot.empty, dot.empty]);
  });
});

describe('rangeOf', () => {
  it('holds clean air, the alarm threshold and every median', () => {
    expect(rangeOf(of([0.9], [0.95]), 0.65)).toEqual({ top: 1, bottom: 0.6 });
    expect(rangeOf(of([0.1], [0.3]), 0.65)).toEqual({ top: 1, bottom: 0.25 });
    expect(rangeOf(of([1], [1.08]), 0.65).top).toBe(1.1);
  });
  it('is not stretched by a short dip', () => expect(rangeOf(of([0], [0.95]), 0.65).bottom).toBe(0.6));
  it('never shows less than no light', () => expect(rangeOf(of([-0.2], [-0.1]), 0.65).bottom).toBe(0));
});
