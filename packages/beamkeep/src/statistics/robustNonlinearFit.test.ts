import { describe, expect, it } from 'vitest';
import { normalNoise } from './normalNoise.js';
import { robustLeastSquares } from './robustLeastSquares.js';
import { robustNonlinearFit } from './robustNonlinearFit.js';

const x = Float64Array.from({ length: 120 }, (_, i) => i / 20);
const decay = ([level = 0, rate = 0]: Float64Array) => x.map((t) => level * Math.exp(-rate * t));

describe('robustNonlinearFit', () => {
  it('law: a linear model gives what the linear robust fit gives, covariance included', () => {
    const noise = normalNoise(66);
    const y = x.map((t, i) => 3 - 2 * t + 0.3 * noise() + (i % 9 === 0 ? 20 : 0));
    const line = robustLeastSquares([x.map(() => 1), x], y);
    const fit = robustNonlinearFit(([a = 0, b = 0]) => x.map((t) => a + b * t), y, [1, 1]);
    for (const j of [0, 1]) {
      expect(fit.parameters[j]).toBeCloseTo(line.coefficients[j] as number, 5);
      const ratio = (fit.covariance[j]?.[j] as number) / (line.covariance[j]?.[j] as number);
      expect(ratio).toBeGreaterThan(0.8);
      expect(ratio).toBeLessThan(1.25);
    }
    expect(fit.trust[9]).toBe(0);
  });
  it('wild rows do not move a decay, and the limits hold the truth', () => {
    const noise = normalNoise(67);
    let held = 0;
    for (let trial = 0; trial < 100; trial++) {
      const y = decay(Float64Array.of(5, 0.7)).map((value, i) => value + 0.1 * noise() + (i % 7 === 0 ? 3 : 0));
      const fit = robustNonlinearFit(decay, y, [3, 1], { leastSpread: 0.01 });
      if (Math.abs((fit.parameters[1] as number) - 0.7) < 1.66 * Math.sqrt(fit.covariance[1]?.[1] as number)) held++;
    }
    expect(held).toBeGreaterThanOrEqual(80); // 90 expected, 3 the standard deviation of the count
  });
  it('missing rows and weights of 0 have no say', () => {
    const y = decay(Float64Array.of(5, 0.7)).map((value, i) => (i === 4 ? Number.NaN : i === 5 ? 40 : value));
    const fit = robustNonlinearFit(decay, y, [3, 1], { weights: y.map((_, i) => (i === 5 ? 0 : 1)) });
    expect(fit.n).toBe(118);
    expect([fit.trust[4], fit.trust[5]]).toEqual([0, 0]);
    expect(fit.parameters[1]).toBeCloseTo(0.7, 8);
  });
});
