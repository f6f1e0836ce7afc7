import { nonlinearFit, type Prediction } from 'beamkeep/statistics';
import { describe, expect, it } from 'vitest';
import { expectWithin } from '../compare.js';
import { casesOf, dataFile, parityCase, quantities } from './published.js';

type Formula = (b: readonly number[], x: number) => number;

const at = (b: readonly number[], k: number) => b[k - 1] as number;

/** Two peaks on a decaying base: the model of Gauss1 to Gauss3. */
const twoPeaks: Formula = (b, x) =>
  at(b, 1) * Math.exp(-at(b, 2) * x) +
  at(b, 3) * Math.exp(-(((x - at(b, 4)) / at(b, 5)) ** 2)) +
  at(b, 6) * Math.exp(-(((x - at(b, 7)) / at(b, 8)) ** 2));

const cycle = (cos: number, sin: number, x: number, period: number) =>
  cos * Math.cos((2 * Math.PI * x) / period) + sin * Math.sin((2 * Math.PI * x) / period);

const formulas: Record<string, Formula> = {
  'strd-gauss1': twoPeaks,
  'strd-gauss2': twoPeaks,
  'strd-gauss3': twoPeaks,
  'strd-misra1a': (b, x) => at(b, 1) * (1 - Math.exp(-at(b, 2) * x)),
  'strd-enso': (b, x) =>
    at(b, 1) +
    cycle(at(b, 2), at(b, 3), x, 12) +
    cycle(at(b, 5), at(b, 6), x, at(b, 4)) +
    cycle(at(b, 8), at(b, 9), x, at(b, 7)),
};

describe('nonlinearFit', () => {
  for (const { id, inputs, expected, tolerance, source } of casesOf<{
    file: string;
    start1: number[];
    start2: number[];
  }>('nonlinear-regression')) {
    const { x, y } = dataFile(inputs.file) as { x: Float64Array; y: Float64Array };
    const predict: Prediction = (b) => x.map((value) => (formulas[id] as Formula)([...b], value));
    for (const [name, start] of [
      ['start 1', inputs.start1],
      ['start 2', inputs.start2],
    ] as const) {
      it(`${id}, ${name}: ${source}`, () => {
        const fit = nonlinearFit(predict, y, start);
        expect(fit.converged).toBe(true);
        const found = {
          parameters: [...fit.parameters],
          standardDeviations: fit.covariance.map((row, i) => Math.sqrt(row[i] as number)),
          residualSumOfSquares: fit.residualSquares,
          residualStandardDeviation: fit.residualSpread,
        };
        expectWithin(found, expected, tolerance);
      });
    }
  }

  it('scipy.optimize.curve_fit 1.10.1: gaussian lobe, three parameters', () => {
    const { inputs, results } = parityCase<
      { x: number[]; y: number[] },
      { parameters: number[]; covariance: number[][]; residualSumOfSquares: number }
    >('gaussian lobe, three parameters');
    const predict: Prediction = ([a = 0, centre = 0, sigma = 1]) =>
      Float64Array.from(inputs.x, (x) => a * Math.exp(-(((x - centre) / sigma) ** 2) / 2));
    const fit = nonlinearFit(predict, Float64Array.from(inputs.y), [90, 0, 0.5]);
    results.parameters.forEach((parameter, i) => {
      expect(Math.abs((fit.parameters[i] as number) / parameter - 1)).toBeLessThan(1e-8);
      const expected = results.covariance[i]?.[i] ?? NaN;
      expect(Math.abs((fit.covariance[i]?.[i] as number) / expected - 1)).toBeLessThan(1e-5);
    });
    expect(fit.residualSquares).toBeCloseTo(results.residualSumOfSquares, 9);
  });

  it('no published quantity is left without a test', () => {
    const tested = [
      'alias-frequency',
      'calibration-error',
      'goertzel-bin',
      'goertzel-coefficient',
      'goertzel-power',
      'level-step',
      'linear-regression',
      'lomb-scargle',
      'mann-kendall',
      'mann-kendall-exact',
      'nonlinear-regression',
      'robust-constant',
      'robust-spread',
      'student-t-quantile',
      'theil-sen',
      'two-sample-t',
      'univariate-summary',
      'welch',
    ];
    expect([...quantities].sort()).toEqual(tested);
  });
});
