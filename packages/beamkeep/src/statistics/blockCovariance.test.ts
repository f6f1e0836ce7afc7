import { describe, expect, it } from 'vitest';
import { blockCovariance } from './blockCovariance.js';
import { studentQuantile } from './distributions/student.js';
import { leastSquares } from './leastSquares.js';
import { normalNoise } from './normalNoise.js';
import { robustLeastSquares } from './robustLeastSquares.js';

const rows = 24 * 40;
const ones = new Float64Array(rows).fill(1);
const slow = Float64Array.from({ length: rows }, (_, i) => Math.sin(i / 60));

describe('blockCovariance', () => {
  it('limits hold the truth as often as they say where each day has an error of its own', () => {
    const noise = normalNoise(63);
    let held = 0;
    let plainHeld = 0;
    for (let trial = 0; trial < 300; trial++) {
      const daily = Array.from({ length: 40 }, noise);
      const y = slow.map((x, i) => 2 + x + (daily[Math.floor(i / 24)] as number) + noise());
      const fit = leastSquares([ones, slow], y);
      const { covariance, degreesOfFreedom } = blockCovariance([ones, slow], fit, 24);
      const off = Math.abs((fit.coefficients[1] as number) - 1);
      if (off < studentQuantile(0.95, degreesOfFreedom) * Math.sqrt(covariance[1]?.[1] as number)) held++;
      if (off < 1.645 * Math.sqrt(fit.covariance[1]?.[1] as number)) plainHeld++;
    }
    expect(held).toBeGreaterThanOrEqual(252); // 270 expected; 5.2 is the standard deviation of the count
    expect(held).toBeLessThanOrEqual(286);
    expect(plainHeld).toBeLessThan(150);
  });
  it('a robust fit gives way more: its limits hold the truth as often', () => {
    const noise = normalNoise(64);
    let held = 0;
    for (let trial = 0; trial < 300; trial++) {
      const y = slow.map((x, i) => 2 + x + noise() + (i % 50 === 0 ? 30 : 0));
      const fit = robustLeastSquares([ones, slow], y);
      const { covariance, degreesOfFreedom } = blockCovariance([ones, slow], fit, 24);
      const off = Math.abs((fit.coefficients[1] as number) - 1);
      if (off < studentQuantile(0.95, degreesOfFreedom) * Math.sqrt(covariance[1]?.[1] as number)) held++;
    }
    expect(held).toBeGreaterThanOrEqual(252);
    expect(held).toBeLessThanOrEqual(286);
  });
  it('rows of no say count for nothing, whatever stands there', () => {
    const y = slow.map((x, i) => (i < 48 ? Number.NaN : x + Math.cos(i)));
    const say = ones.map((_, i) => (i >= 72 ? 1 : 0));
    const fit = leastSquares([ones, slow], y, say);
    const whole = blockCovariance([ones, slow], fit, 24, say);
    const cut = (column: Float64Array) => column.subarray(72);
    const short = leastSquares([cut(ones), cut(slow)], cut(y));
    const alone = blockCovariance([cut(ones), cut(slow)], short, 24);
    expect(whole.degreesOfFreedom).toBe(35);
    expect(whole.covariance[1]?.[1]).toBeCloseTo(alone.covariance[1]?.[1] as number, 12);
  });
  it('a column that says nothing new stays unknown', () => {
    const fit = leastSquares([ones, ones], slow);
    expect(blockCovariance([ones, ones], fit, 24).covariance[1]?.[1]).toBe(Infinity);
  });
  it('too few blocks tell nothing', () => {
    const fit = leastSquares([ones, slow], slow);
    const { covariance, degreesOfFreedom } = blockCovariance([ones, slow], fit, rows);
    expect(degreesOfFreedom).toBe(0);
    expect(covariance[0]?.[0]).toBeNaN();
  });
  it('says what must change', () =>
    expect(() => blockCovariance([ones], leastSquares([ones], slow), 0)).toThrow('block 0 must be a whole number'));
});
