import { normalOverMad } from 'beamkeep/numbers';
import { mean, median, medianAbsoluteDeviation, quantile, rollingMedian, standardDeviation } from 'beamkeep/statistics';
import { describe, expect, it } from 'vitest';
import { expectWithin } from '../compare.js';
import { casesOf, parityCase, sharedInputs } from './published.js';

describe('order statistics', () => {
  for (const name of ['order statistics, 41 quantised', 'order statistics, 40', 'order statistics, two values']) {
    it(`numpy 1.24.2, scipy 1.10.1: ${name}`, () => {
      const { inputs, results } = parityCase<
        { values: number[]; probabilities: number[] },
        {
          median: number;
          mad: number;
          madNormal: number;
          quantilesType7: number[];
          mean: number;
          standardDeviation: number;
        }
      >(name);
      expect(median(inputs.values)).toBeCloseTo(results.median, 12);
      expect(medianAbsoluteDeviation(inputs.values)).toBeCloseTo(results.madNormal, 12);
      inputs.probabilities.forEach((share, i) => {
        expect(quantile(inputs.values, share)).toBeCloseTo(results.quantilesType7[i] ?? NaN, 11);
      });
      expect(mean(inputs.values)).toBeCloseTo(results.mean, 12);
      expect(standardDeviation(inputs.values)).toBeCloseTo(results.standardDeviation, 12);
    });
  }

  it('pandas 1.5.3: rolling median, 25 points centred', () => {
    const { results } = parityCase<unknown, { median: number[] }>('rolling median, 25 points centred');
    const found = rollingMedian(sharedInputs.cycle, 25);
    results.median.forEach((expected, i) => {
      expect(found[i]).toBeCloseTo(expected, 12);
    });
  });

  for (const { id, inputs, expected, tolerance, source } of casesOf<{ values: number[] }>('robust-spread')) {
    it(`${id}: ${source}`, () => {
      const { values } = inputs;
      const scaled = medianAbsoluteDeviation(values);
      const madRaw = scaled / normalOverMad.value;
      expectWithin({ mean: mean(values), median: median(values), madRaw, madScaled: scaled }, expected, tolerance);
    });
  }

  for (const { id, expected, tolerance, source } of casesOf('robust-constant')) {
    it(`${id}: ${source}`, () => expectWithin(normalOverMad.value, expected, tolerance));
  }
});
