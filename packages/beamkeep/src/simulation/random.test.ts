import { describe, expect, it } from 'vitest';
import { random } from './random.js';

const many = (count: number, draw: () => number) => Array.from({ length: count }, draw);
const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;

describe('random', () => {
  it('gives the same numbers for the same seed and names', () => {
    const [a, b] = [random(7, 'B1', 'dirt'), random(7, 'B1', 'dirt')];
    expect(many(100, a.normal)).toEqual(many(100, b.normal));
  });

  it('gives other numbers for another seed or another name', () => {
    const first = random(7, 'B1', 'dirt').uniform();
    for (const other of [random(8, 'B1', 'dirt'), random(7, 'B2', 'dirt'), random(7, 'B1', 'dirs')]) {
      expect(other.uniform()).not.toBe(first);
    }
  });

  it('draws normal numbers of mean 0 and spread 1, to three spreads of their mean', () => {
    const values = many(40_000, random(1, 'normal').normal);
    expect(Math.abs(mean(values))).toBeLessThan(3 / Math.sqrt(40_000));
    expect(mean(values.map((value) => value * value))).toBeCloseTo(1, 1);
  });

  it('draws exponential numbers of mean 1', () => {
    expect(Math.abs(mean(many(40_000, random(2, 'exponential').exponential)) - 1)).toBeLessThan(3 / Math.sqrt(40_000));
  });

  it('stays within bounds and reaches whole ones', () => {
    const draw = random(3, 'bounds');
    expect(new Set(many(200, () => draw.integer(2, 4)))).toEqual(new Set([2, 3, 4]));
    for (const value of many(200, () => draw.logBetween(0.1, 10))) {
      expect(value).toBeGreaterThanOrEqual(0.1);
      expect(value).toBeLessThanOrEqual(10);
    }
  });

  it('chooses as often as the weights say', () => {
    const draw = random(4, 'weights');
    const chosen = many(10_000, () =>
      draw.weighted([
        [1, 3],
        [0, 1],
      ]),
    );
    expect(mean(chosen)).toBeCloseTo(0.75, 1);
  });
});
