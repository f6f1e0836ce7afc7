import { leastSquares } from 'beamkeep/statistics';
import { describe, expect, it } from 'vitest';
import { expectWithin } from '../compare.js';
import { casesOf, dataFile, parityCase } from './published.js';

const ones = (rows: number) => new Float64Array(rows).fill(1);
const roots = (covariance: readonly Float64Array[]) => covariance.map((row, i) => Math.sqrt(row[i] as number));

describe('leastSquares', () => {
  for (const { id, inputs, expected, tolerance, source } of casesOf<{ file: string }>('linear-regression')) {
    it(`${id}: ${source}`, () => {
      const { x, y } = dataFile(inputs.file) as { x: Float64Array; y: Float64Array };
      const degree = (expected as { parameters: number[] }).parameters.length - 1;
      const powers = Array.from({ length: degree + 1 }, (_, k) => x.map((value) => value ** k));
      const fit = leastSquares(powers, y);
      const found = {
        parameters: [...fit.coefficients],
        standardDeviations: roots(fit.covariance),
        residualStandardDeviation: fit.residualSpread,
        rSquared: fit.rSquared,
      };
      expectWithin(found, expected, tolerance);
    });
  }

  it('scipy.stats.linregress 1.10.1: straight line', () => {
    const { inputs, results } = parityCase<
      { x: number[]; y: number[] },
      { slope: number; intercept: number; r: number; slopeError: number; interceptError: number }
    >('straight line');
    const fit = leastSquares([ones(inputs.x.length), Float64Array.from(inputs.x)], Float64Array.from(inputs.y));
    expect(fit.coefficients[0]).toBeCloseTo(results.intercept, 12);
    expect(fit.coefficients[1]).toBeCloseTo(results.slope, 13);
    expect(fit.rSquared).toBeCloseTo(results.r ** 2, 13);
    const [interceptError, slopeError] = roots(fit.covariance);
    expect(interceptError).toBeCloseTo(results.interceptError, 12);
    expect(slopeError).toBeCloseTo(results.slopeError, 14);
  });

  it('numpy.linalg.lstsq 1.24.2: two harmonics of the day, a slope and the temperature', () => {
    const { inputs, results } = parityCase<
      { hours: number[]; temperature: number[]; y: number[] },
      { coefficients: number[]; standardErrors: number[]; residualSumOfSquares: number; rSquared: number }
    >('harmonic regression');
    const hours = Float64Array.from(inputs.hours);
    const turn = (perDay: number) => hours.map((hour) => (2 * Math.PI * perDay * hour) / 24);
    const fit = leastSquares(
      [
        ones(hours.length),
        hours.map((hour) => hour / 24),
        turn(1).map(Math.cos),
        turn(1).map(Math.sin),
        turn(2).map(Math.cos),
        turn(2).map(Math.sin),
        Float64Array.from(inputs.temperature),
      ],
      Float64Array.from(inputs.y),
    );
    const errors = roots(fit.covariance);
    results.coefficients.forEach((coefficient, i) => {
      expect(fit.coefficients[i]).toBeCloseTo(coefficient, 11);
      expect(errors[i]).toBeCloseTo(results.standardErrors[i] ?? NaN, 12);
    });
    expect(fit.rSquared).toBeCloseTo(results.rSquared, 13);
    expect(fit.residualSpread ** 2 * (fit.n - fit.rank)).toBeCloseTo(results.residualSumOfSquares, 11);
  });
});
