import { mannKendall, mannKendallTail, median, theilSen } from 'beamkeep/statistics';
import { describe, expect, it } from 'vitest';
import { expectWithin } from '../compare.js';
import { casesOf, dataFile, parityCase } from './published.js';

type Line = { slope: number; intercept: number; lowSlope: number; highSlope: number };

/** The second custom for the intercept: the median of what the slope leaves. */
const interceptByResiduals = (x: readonly number[], y: readonly number[], slope: number) =>
  median(y.map((value, i) => value - slope * (x[i] as number)));

describe('theilSen', () => {
  for (const { id, inputs, expected, tolerance, source } of casesOf<{ x: number[]; y: number[]; confidence: number }>(
    'theil-sen',
  )) {
    it(`${id}: ${source}`, () => {
      const { slope, intercept, low, high } = theilSen(inputs.x, inputs.y, inputs.confidence);
      const found = {
        slope,
        interceptByMedians: intercept,
        interceptByResiduals: interceptByResiduals(inputs.x, inputs.y, slope),
        low,
        high,
      };
      expectWithin(found, expected, tolerance);
    });
  }

  for (const name of ['121 points, ties in y', '100 points (even number of pairs)', 'four points', 'flat']) {
    it(`scipy.stats.theilslopes 1.10.1: ${name}`, () => {
      const { inputs, results } = parityCase<{ x: number[]; y: number[] }, Record<string, Line>>(`theil-sen, ${name}`);
      for (const confidence of [0.95, 0.9]) {
        const expected = results[`confidence ${confidence}`] as Line;
        const { slope, intercept, low, high } = theilSen(inputs.x, inputs.y, confidence);
        expect(slope).toBeCloseTo(expected.slope, 14);
        expect(intercept).toBeCloseTo(expected.intercept, 12);
        expect(low).toBeCloseTo(expected.lowSlope, 14);
        expect(high).toBeCloseTo(expected.highSlope, 14);
      }
      const { slope } = theilSen(inputs.x, inputs.y);
      expect(interceptByResiduals(inputs.x, inputs.y, slope)).toBeCloseTo(Number(results['joint intercept']), 12);
    });
  }
});

describe('mannKendall', () => {
  for (const { id, inputs, expected, tolerance, source } of casesOf<{ values?: number[]; file?: string }>(
    'mann-kendall',
  )) {
    it(`${id}: ${source}`, () => {
      const nile = inputs.file === undefined ? undefined : dataFile(inputs.file);
      const values = nile ? (nile as { volume: Float64Array }).volume : (inputs.values ?? []);
      const { s, variance, z } = mannKendall(values);
      const { slope } = theilSen(
        Array.from(values, (_, i) => i),
        values,
      );
      expectWithin({ s, variance, z, senSlopePerStep: slope }, expected, tolerance);
    });
  }

  for (const { id, inputs, expected, tolerance, source } of casesOf<{ samples: number; s: number }>(
    'mann-kendall-exact',
  )) {
    it(`${id}: ${source}`, () => expectWithin(mannKendallTail(inputs.samples, inputs.s), expected, tolerance));
  }

  for (const name of ['mann-kendall, no ties', 'mann-kendall, flat']) {
    it(`own formula, variance as scipy.stats.kendalltau 1.10.1: ${name}`, () => {
      const { inputs, results } = parityCase<{ y: number[] }, { S: number; variance: number; z: number; p: number }>(
        name,
      );
      const found = mannKendall(inputs.y);
      expect(found.s).toBe(results.S);
      expect(found.variance).toBeCloseTo(results.variance, 9);
      expect(found.z).toBeCloseTo(results.z, 12);
      expect(Math.abs(found.p / results.p - 1)).toBeLessThan(1e-12);
    });
  }
});
