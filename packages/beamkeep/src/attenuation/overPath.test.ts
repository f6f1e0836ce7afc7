import { describe, expect, it } from 'vitest';
import { overPath } from './overPath.js';

describe('overPath', () => {
  it('is exact at both ends and over an equal path', () => {
    expect(overPath(0, 50, 100)).toBe(0);
    expect(overPath(100, 50, 100)).toBe(100);
    expect(overPath(42.5, 0.0762, 0.0762)).toBe(42.5);
  });

  it('missing stays missing', () => expect(overPath(Number.NaN, 1, 2)).toBeNaN());

  it('says what must change', () => {
    expect(() => overPath(120, 1, 2)).toThrow('from 0 to 100');
    expect(() => overPath(-1, 1, 1)).toThrow('from 0 to 100');
    expect(() => overPath(20, 0, 2)).toThrow('measured path 0 m must be more than 0');
    expect(() => overPath(20, 1, -2)).toThrow('wanted path -2 m must be more than 0');
  });
});
