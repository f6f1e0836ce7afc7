import { describe, expect, it } from 'vitest';
import { ScaleSeen, smallestStep } from './quantum.js';

/** Values on a scale, as a noisy reading meets them: those near the middle more often. */
function noisy(readings: number, step: (noise: number) => number): Map<number, number> {
  const seen = new Map<number, number>();
  let state = 12345;
  for (let at = 0; at < readings; at++) {
    let noise = 0;
    for (let k = 0; k < 4; k++) {
      state = (Math.imul(state, 1103515245) + 12345) >>> 0;
      noise += state / 2 ** 32 - 0.5;
    }
    const value = step(noise);
    seen.set(value, (seen.get(value) ?? 0) + 1);
  }
  return seen;
}
const rounded = (value: number, decimals: number): number => Number(value.toFixed(decimals));

describe('smallestStep', () => {
  it('tenths of a percent', () => expect(smallestStep(noisy(5000, (x) => rounded(99 + x, 1)))).toBeCloseTo(0.1, 12));
  it('half millivolts written with one decimal', () =>
    expect(smallestStep(noisy(5000, (x) => Math.round((3950 + 5 * x) * 2) / 2))).toBe(0.5));
  it('whole counts', () => expect(smallestStep(noisy(5000, (x) => Math.round(2000 + 9 * x)))).toBe(1));
  it('a scale of 4095 steps written with two decimals', () => {
    const step = smallestStep(noisy(20_000, (x) => rounded((Math.round((0.99 + x / 100) * 4095) / 4095) * 100, 2)));
    expect(step).toBeGreaterThanOrEqual(0.02);
    expect(step).toBeLessThanOrEqual(0.03);
  });
  it('a few readings of more decimals do not make the scale finer', () => {
    const values = noisy(5000, (x) => rounded(99 + x, 1));
    values.set(99.123456, 3);
    expect(smallestStep(values)).toBeCloseTo(0.1, 12);
  });
  it('a few values far apart do not make the scale coarser', () => {
    const covered = new Map([
      [100, 900],
      [0, 30],
    ]);
    expect(smallestStep(covered)).toBe(1);
    expect(smallestStep(new Map([...covered, [50, 20], [35, 12]]))).toBe(1);
    expect(smallestStep(new Map([...covered, [62.5, 20]]))).toBe(0.1);
  });
  it('a few losses of a clean beam, which lie about 0, are close by the full scale', () => {
    const decibels = new Map([-0.05, 0, 0.05, 0.1, 0.15, -0.1].map((value) => [value, 40]));
    expect(smallestStep(decibels, 10)).toBeCloseTo(0.05, 12);
    expect(smallestStep(decibels)).toBeCloseTo(0.01, 12);
    expect(smallestStep(new Map([0, 4.35, 8.7].map((value) => [value, 40])), 10)).toBeCloseTo(0.01, 12);
  });
  it('finer than can be told, or nothing to tell it by', () => {
    expect(smallestStep(noisy(3000, (x) => 99 + x))).toBe(0);
    expect(smallestStep(new Map([[100, 5000]]))).toBe(0);
    expect(smallestStep(new Map())).toBe(0);
  });
});

describe('ScaleSeen', () => {
  it('looks at the first readings only, and leaves the missing out', () => {
    const scale = new ScaleSeen();
    scale.see(Float64Array.of(1, Number.NaN, 2, 3), 4);
    expect([scale.full, scale.step()]).toEqual([false, 1]);
    const rising = Float64Array.from({ length: 1000 }, (_, k) => k % 7);
    for (let k = 0; k < 20; k++) scale.see(rising, 1000);
    expect(scale.full).toBe(true);
  });
  it('is not misled by a clean reading that is held for weeks', () => {
    const scale = new ScaleSeen();
    for (let k = 0; k < 70; k++) scale.see(new Float64Array(1000).fill(100), 1000);
    scale.see(Float64Array.of(99.9, 99.8, 99.6, 99.5, 99.2, 98.9, 98.4), 7);
    expect(scale.step()).toBeCloseTo(0.1, 12);
  });
});
