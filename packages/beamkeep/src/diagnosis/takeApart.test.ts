import { describe, expect, it } from 'vitest';
import { at, dayOf, hourOf, left, pictured, recordOf } from '../../../../tests/diagnosis/kit.js';
import { heatOfDay } from '../../../../tests/diagnosis/typical.js';
import { cut } from './cells.js';
import { between, bridge } from './takeApart.js';

describe('takeApart', () => {
  const slow = (t: number): number => 0.03 * (dayOf(t) + hourOf(t) / 24);
  const sway = (t: number): number => 0.3 * heatOfDay(t);
  const jump = (t: number): number => (t < at(14, 11) ? 0 : 0.7);
  const { parts, view } = pictured(recordOf((t) => left(0.5 + slow(t) + sway(t) + jump(t)), { days: 28 }));

  it('law: slow course, cycle and what is left make up the loss again, cell by cell', () => {
    const { cells, slow: course, cycle, left: rest } = parts;
    for (let c = 30; c < cells.length - 30; c++) {
      const row = (cells.row[c] as number) + 5;
      const whole = (course[c] as number) + (cycle[c] as number) + (rest[row] as number);
      expect(Math.abs(whole - (view.loss[row] as number))).toBeLessThan(0.06);
    }
  });
  it('leaves little of what is slow, daily or a step', () => {
    const away = parts.left.map(Math.abs).sort();
    expect(away[Math.floor(0.95 * away.length)]).toBeLessThan(0.06);
  });
  it('follows the slow course, free to jump at the step', () => {
    for (const d of [5, 10, 18, 24]) {
      const noon = parts.cells.length / 28;
      const c = Math.round((d + 0.5) * noon);
      const when = at(d, 12);
      expect(parts.slow[c]).toBeCloseTo(0.5 + slow(when) + jump(when), 1);
    }
  });
  it('keeps the sway in the cycle', () => {
    expect(parts.cycleFitted).toBe(true);
    for (const d of [5, 10, 18]) {
      const day = parts.cycle.subarray(24 * d, 24 * d + 24);
      const swing = sway(at(d, 15)) - sway(at(d, 3));
      expect((Math.max(...day) - Math.min(...day)) / swing).toBeCloseTo(1, 0);
    }
  });
});

describe('bridge', () => {
  it('fills holes with the nearest known before, or after', () =>
    expect([...bridge(Float64Array.of(NaN, 2, NaN, NaN, 5, NaN), 0)]).toEqual([2, 2, 2, 2, 5, 5]));
  it('falls back where nothing is known', () => {
    expect([...bridge(Float64Array.of(NaN, NaN), 3)]).toEqual([3, 3]);
    expect([...bridge(Float64Array.of(NaN), NaN)]).toEqual([0]);
  });
});

describe('between', () => {
  const cells = cut(recordOf(() => 1, { days: 10 }).trace, 300, 0);
  const values = Float64Array.from({ length: cells.length }, (_, c) => c);
  it('is straight between the middles of cells', () => {
    const half = cells.width / 2;
    expect(between(cells, values, cells.start + 7 * cells.width + half, 0, cells.length - 1)).toBeCloseTo(7, 9);
    expect(between(cells, values, cells.start + 8 * cells.width, 0, cells.length - 1)).toBeCloseTo(7.5, 9);
  });
  it('keeps within the cells it may use', () => {
    const when = cells.start + 20 * cells.width;
    expect(between(cells, values, when, 0, 10)).toBe(10);
    expect(between(cells, values, when, 30, 40)).toBe(30);
  });
});
