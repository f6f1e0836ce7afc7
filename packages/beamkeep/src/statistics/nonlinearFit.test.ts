import { describe, expect, it } from 'vitest';
import { leastSquares } from './leastSquares.js';
import { nonlinearFit } from './nonlinearFit.js';
import { normalNoise } from './normalNoise.js';

const x = Float64Array.from({ length: 60 }, (_, i) => i / 10);
const decay = ([level = 0, rate = 0]: Float64Array) => x.map((t) => level * Math.exp(-rate * t));

describe('nonlinearFit', () => {
  it('law: a linear model gives what linear least squares gives', () => {
    const noise = normalNoise(65);
    const y = x.map((t, i) => (i === 7 ? Number.NaN : 3 - 2 * t + noise()));
    const weights = x.map((_, i) => 1 + (i % 3));
    const line = leastSquares([x.map(() => 1), x], y, weights);
    const fit = nonlinearFit(([a = 0, b = 0]) => x.map((t) => a + b * t), y, [0, 0], { weights });
    expect(fit.converged).toBe(true);
    expect(fit.n).toBe(59);
    for (const j of [0, 1]) {
      expect(fit.parameters[j]).toBeCloseTo(line.coefficients[j] as number, 9);
      expect(fit.covariance[j]?.[j]).toBeCloseTo(line.covariance[j]?.[j] as number, 9);
    }
    expect(fit.residualSpread).toBeCloseTo(line.residualSpread, 10);
    expect(fit.residuals[7]).toBeNaN();
  });
  it('a model that fits without rest comes to rest', () => {
    const fit = nonlinearFit(decay, decay(Float64Array.of(5, 0.7)), [1, 3]);
    expect(fit.converged).toBe(true);
    expect(fit.parameters[0]).toBeCloseTo(5, 9);
    expect(fit.parameters[1]).toBeCloseTo(0.7, 9);
  });
  it('a parameter of which the rows say nothing is endlessly unsure', () => {
    const fit = nonlinearFit(([a = 0, b = 0]) => x.map(() => a + 0 * b), x, [1, 1]);
    expect(fit.covariance[1]?.[1]).toBe(Infinity);
    expect(fit.parameters[0]).toBeCloseTo(2.95, 9);
  });
  it('no rows leave the start', () => {
    const fit = nonlinearFit(
      decay,
      x.map(() => Number.NaN),
      [1, 2],
    );
    expect([...fit.parameters]).toEqual([1, 2]);
    expect(fit.residualSpread).toBeNaN();
  });
  it('gives up after the steps it was given, and says so', () =>
    expect(nonlinearFit(decay, decay(Float64Array.of(5, 0.7)), [1, 9], { mostSteps: 1 }).converged).toBe(false));
  it('says what must change', () => {
    expect(() => nonlinearFit(decay, new Float64Array(2), [1, 1])).toThrow('model of 60 rows must be as long as y (2)');
    expect(() => nonlinearFit(decay, x, [Number.NaN, 1])).toThrow('no value at the start (NaN, 1)');
  });
});
