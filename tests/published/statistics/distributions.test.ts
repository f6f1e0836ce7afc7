import { autocorrelation, mean, standardDeviation, studentQuantile, twoSampleT } from 'beamkeep/statistics';
import { describe, it } from 'vitest';
import { expectWithin } from '../compare.js';
import { casesOf, dataFile } from './published.js';

/** Values of the generated sets, by the rule that the case states in words. */
const generated: Record<string, number[]> = {
  'strd-numacc1': [10000001, 10000003, 10000002],
  'strd-numacc2': [1.2, ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? 1.1 : 1.3))],
  'strd-numacc4': [10000000.2, ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? 10000000.1 : 10000000.3))],
};

describe('mean, standardDeviation, autocorrelation', () => {
  for (const { id, inputs, expected, tolerance, source } of casesOf<{ file?: string }>('univariate-summary')) {
    it(`${id}: ${source}`, () => {
      const values = inputs.file ? (dataFile(inputs.file) as { y: Float64Array }).y : (generated[id] ?? []);
      const found = {
        mean: mean(values),
        standardDeviation: standardDeviation(values),
        autocorrelationLag1: autocorrelation(values, 1)[1],
      };
      expectWithin(found, expected, tolerance);
    });
  }
});

describe('studentQuantile', () => {
  for (const { id, inputs, expected, tolerance, source } of casesOf<{ degreesOfFreedom: number; probability: number }>(
    'student-t-quantile',
  )) {
    it(`${id}: ${source}`, () =>
      expectWithin(studentQuantile(inputs.probability, inputs.degreesOfFreedom), expected, tolerance));
  }

  // NIST/SEMATECH e-Handbook, table of Student's t, probability 0.975, 1 to 9 degrees of freedom, as printed
  [12.706, 4.303, 3.182, 2.776, 2.571, 2.447, 2.365, 2.306, 2.262].forEach((printed, i) => {
    it(`NIST/SEMATECH e-Handbook, upper critical values of Student's t: ${i + 1} degrees of freedom`, () =>
      expectWithin(studentQuantile(0.975, i + 1), printed, 0.0005));
  });
  // 40 CFR 60 Appendix C, Table 1, one-sided 95 %, 2 to 7 degrees of freedom, as printed
  [2.92, 2.353, 2.132, 2.015, 1.943, 1.895].forEach((printed, i) => {
    it(`40 CFR 60 Appendix C, Table 1: ${i + 2} degrees of freedom`, () =>
      expectWithin(studentQuantile(0.95, i + 2), printed, 0.0005));
  });

  for (const { id, inputs, expected, tolerance, source } of casesOf<{
    referencePercent: number;
    readingsPercent: number[];
  }>('calibration-error')) {
    it(`${id}: ${source}`, () => {
      const differences = inputs.readingsPercent.map((reading) => reading - inputs.referencePercent);
      const n = differences.length;
      const spread = standardDeviation(differences);
      const confidenceCoefficient = (studentQuantile(0.975, n - 1) * spread) / Math.sqrt(n);
      const meanDifference = mean(differences);
      const calibrationError = Math.abs(meanDifference) + Math.abs(confidenceCoefficient);
      expectWithin(
        { meanDifference, standardDeviation: spread, confidenceCoefficient, calibrationError },
        expected,
        tolerance,
      );
    });
  }
});

describe('twoSampleT', () => {
  for (const { id, inputs, expected, tolerance, source } of casesOf<{ before: number[]; after: number[] }>(
    'two-sample-t',
  )) {
    it(`${id}: ${source}`, () => {
      const { pooledSpread, ...found } = twoSampleT(inputs.before, inputs.after);
      const criticalOneSided95 = studentQuantile(0.95, found.degreesOfFreedom);
      const changed = found.t > criticalOneSided95;
      expectWithin(
        { ...found, pooledStandardDeviation: pooledSpread, criticalOneSided95, changed },
        expected,
        tolerance,
      );
    });
  }
});
