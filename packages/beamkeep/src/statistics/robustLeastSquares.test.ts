import { describe, expect, it } from 'vitest';
import { leastSquares } from './leastSquares.js';
import { normalNoise } from './normalNoise.js';
import { robustLeastSquares } from './robustLeastSquares.js';

const rows = 200;
const ones = new Float64Array(rows).fill(1);
const count = Float64Array.from({ length: rows }, (_, i) => i / rows);

describe('robustLeastSquares', () => {
  it('spikes and a dip over a quarter of the rows do not bend the line', () => {
    const noise = normalNoise(21);
    const y = count.map((t, i) => 3 - 2 * t + 0.05 * noise() + (i % 10 === 0 ? 30 : 0) + (i > 90 && i < 120 ? 8 : 0));
    const { coefficients, residualSpread, trust } = robustLeastSquares([ones, count], y);
    expect(Math.abs((coefficients[0] as number) - 3)).toBeLessThan(0.03);
    expect(Math.abs((coefficients[1] as number) + 2)).toBeLessThan(0.05);
    expect(residualSpread).toBeGreaterThan(0.04);
    expect(residualSpread).toBeLessThan(0.08);
    expect(trust[100]).toBe(0);
    expect(trust[55]).toBeGreaterThan(0.3);
  });
  it('in clean noise: limits of 95 % hold the truth about 95 times in 100, and are hardly wider than the plain ones', () => {
    let held = 0;
    let ratio = 0;
    const noise = normalNoise(5);
    for (let trial = 1; trial <= 400; trial++) {
      const y = count.map((t) => 1 + t + noise());
      const robust = robustLeastSquares([ones, count], y);
      const error = Math.sqrt(robust.covariance[1]?.[1] as number);
      if (Math.abs((robust.coefficients[1] as number) - 1) < 1.97 * error) held++;
      ratio += error / Math.sqrt(leastSquares([ones, count], y).covariance[1]?.[1] as number) / 400;
    }
    expect(held).toBeGreaterThanOrEqual(370); // 380 expected, 4.4 the standard deviation of the count
    expect(held).toBeLessThanOrEqual(390);
    expect(ratio).toBeGreaterThan(1);
    expect(ratio).toBeLessThan(1.06); // 95 % efficiency: 1.026
  });
  it('weights of 0 and missing values leave rows out; no trust is put in them', () => {
    const y = count.map((t, i) => (i === 3 ? Number.NaN : 5 + t));
    const weights = ones.map((_, i) => (i === 4 ? 0 : 2));
    const fit = robustLeastSquares([ones, count], y, { weights, leastSpread: 0.01 });
    expect(fit.n).toBe(rows - 2);
    expect(fit.coefficients[1]).toBeCloseTo(1, 10);
    expect([fit.trust[3], fit.trust[4], fit.trust[5]]).toEqual([0, 0, 1]);
    expect(fit.residualSpread).toBe(0.01);
  });
  it('the quantum keeps a standing reading from trusting nothing else', () => {
    const y = count.map((_, i) => (i % 5 === 0 ? 99 : 98));
    const fit = robustLeastSquares([ones], y, { leastSpread: 1 / Math.sqrt(12) });
    expect(fit.coefficients[0]).toBeGreaterThan(98.02);
    expect(fit.residualSpread).toBeCloseTo(1 / Math.sqrt(12), 12);
  });
  it('a perfect fit stays finite', () => {
    const fit = robustLeastSquares([ones, count], count);
    expect(fit.coefficients[1]).toBeCloseTo(1, 12);
    expect(fit.covariance[1]?.[1]).toBeLessThan(1e-20);
  });
  it('too few rows: nothing can be said', () => {
    const fit = robustLeastSquares([new Float64Array(1).fill(1)], Float64Array.of(2));
    expect(fit.covariance[0]?.[0]).toBeNaN();
    expect(robustLeastSquares([new Float64Array(0)], new Float64Array(0)).n).toBe(0);
  });
});
