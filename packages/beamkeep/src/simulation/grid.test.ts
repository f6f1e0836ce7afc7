import { describe, expect, it } from 'vitest';
import { at, lagged, rank } from './grid.js';

const grid = (values: readonly number[]) => ({ start: 1000, step: 10, values: Float64Array.from(values) });

describe('grid', () => {
  it('reads between its values on a straight line, and its ends beyond', () => {
    const values = grid([1, 3, 7]);
    expect(at(values, 1005)).toBe(2);
    expect(at(values, 1020)).toBe(7);
    expect(at(values, 0)).toBe(1);
    expect(at(values, 5000)).toBe(7);
  });

  it('lags a step by 1 - 1/e after one lag', () => {
    const step = grid(Array.from({ length: 400 }, (_, k) => (k < 100 ? 0 : 1)));
    const late = lagged(step, 500); // 50 steps
    expect(late.values[99]).toBe(0);
    expect(late.values[149]).toBeCloseTo(1 - Math.exp(-1), 6);
  });

  it('ranks', () => {
    expect(rank([5, 1, 3], 0.5)).toBe(3);
    expect(rank([5, 1, 3], 1)).toBe(5);
    expect(rank([], 0.5)).toBeNaN();
  });
});
