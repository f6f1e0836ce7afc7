import {
  aliasFrequency,
  autocorrelation,
  binOf,
  frequencyOf,
  goertzel,
  goertzelCoefficient,
  harmonics,
  lombScargle,
  mean,
  periodogram,
  type Spectrum,
  welch,
} from 'beamkeep/statistics';
import { describe, expect, it } from 'vitest';
import { expectWithin } from '../compare.js';
import { casesOf, parityCase, sharedInputs } from './published.js';

interface Published {
  frequency: number[];
  power: number[];
}

function expectSpectrum(found: Spectrum, expected: Published): void {
  expected.power.forEach((power, k) => {
    expect(found.frequency[k]).toBeCloseTo(expected.frequency[k] ?? NaN, 12);
    expect(Math.abs((found.power[k] as number) - power)).toBeLessThanOrEqual(1e-11 * Math.max(power, 1e-3));
  });
}

describe('welch and periodogram', () => {
  for (const { id, inputs, expected, tolerance, source } of casesOf<{
    values: number[];
    segment: number;
    overlap: number;
    sampleRate: number;
  }>('welch')) {
    it(`${id}: ${source}`, () => {
      const { values, segment, overlap, sampleRate } = inputs;
      const { frequency, power } = welch(values, { segment, overlap, rate: sampleRate });
      expectWithin({ frequencies: [...frequency], power: [...power] }, expected, tolerance);
    });
  }

  for (const name of [
    'welch density, segments of 64',
    'welch spectrum, segments of 64',
    'welch spectrum, segments of 128',
    'welch density, segments of 256',
    'welch density, segments of 100 (not a power of two)',
  ]) {
    it(`scipy.signal.welch 1.10.1: ${name}`, () => {
      const { inputs, results } = parityCase<{ rate: number; segment: number; overlap: number }, Published>(name);
      const scaling = name.includes('density') ? 'density' : 'spectrum';
      expectSpectrum(welch(sharedInputs.noise, { ...inputs, scaling }), results);
    });
  }

  it('scipy.signal.periodogram 1.10.1: periodogram', () => {
    const { inputs, results } = parityCase<{ rate: number }, Published>('periodogram');
    expectSpectrum(periodogram(sharedInputs.noise, inputs.rate), results);
  });
});

describe('goertzel', () => {
  for (const { id, inputs, expected, tolerance, source } of casesOf<{
    toneHertz: number;
    sampleRateHertz: number;
    samples: number;
    bin: number;
  }>('goertzel-coefficient')) {
    it(`${id}: ${source}`, () => {
      const { toneHertz, sampleRateHertz, samples, bin } = inputs;
      expect(Math.round(binOf(toneHertz, sampleRateHertz, samples))).toBe(bin);
      expectWithin(goertzelCoefficient(bin, samples), expected, tolerance);
    });
  }

  for (const { id, inputs, expected, tolerance, source } of casesOf<{
    toneHertz: number;
    sampleRateHertz: number;
    samples: number;
  }>('goertzel-bin')) {
    it(`${id}: ${source}`, () => {
      const { toneHertz, sampleRateHertz, samples } = inputs;
      const exactBin = binOf(toneHertz, sampleRateHertz, samples);
      const bin = Math.round(exactBin);
      const binHertz = frequencyOf(bin, sampleRateHertz, samples);
      expectWithin({ exactBin, bin, binHertz }, expected, tolerance);
    });
  }

  for (const { id, inputs, expected, tolerance, source } of casesOf<{
    samples: number;
    bin: number;
    amplitude: number;
    phaseRadians: number;
  }>('goertzel-power')) {
    it(`${id}: ${source}`, () => {
      const { samples, bin, amplitude, phaseRadians } = inputs;
      const tone = Array.from({ length: samples }, (_, i) => {
        return amplitude * Math.cos((2 * Math.PI * bin * i) / samples + phaseRadians);
      });
      expectWithin(goertzel(tone, bin).power, expected, tolerance);
    });
  }
});

describe('lombScargle', () => {
  for (const { id, inputs, expected, tolerance, source } of casesOf<{
    times: number[];
    values: number[];
    angularFrequencies: number[];
  }>('lomb-scargle')) {
    it(`${id}: ${source}`, () => {
      const frequencies = inputs.angularFrequencies.map((turn) => turn / (2 * Math.PI));
      expectWithin([...lombScargle(inputs.times, inputs.values, frequencies)], expected, tolerance);
    });
  }
});

describe('harmonics', () => {
  it('numpy.linalg.lstsq 1.24.2: amplitudes and phases of 24 h and 12 h', () => {
    const { inputs, results } = parityCase<
      { hours: number[]; temperature: number[]; y: number[] },
      { coefficients: number[]; amplitude24: number; phase24: number; amplitude12: number; phase12: number }
    >('harmonic regression');
    const [, slope = NaN, , , , , warmth = NaN] = results.coefficients;
    const rest = inputs.y.map(
      (y, i) => y - (slope * (inputs.hours[i] ?? NaN)) / 24 - warmth * (inputs.temperature[i] ?? NaN),
    );
    const [daily, halfDaily] = harmonics(Float64Array.from(inputs.hours), Float64Array.from(rest), 24, 2).harmonics;
    expect(daily?.amplitude).toBeCloseTo(results.amplitude24, 11);
    expect(daily?.phase).toBeCloseTo(results.phase24, 11);
    expect(halfDaily?.amplitude).toBeCloseTo(results.amplitude12, 11);
    expect(halfDaily?.phase).toBeCloseTo(results.phase12, 11);
  });
});

describe('autocorrelation', () => {
  it('statsmodels acf(adjusted=False) 0.13.5: autocorrelation', () => {
    const { results } = parityCase<unknown, { acf: number[] }>('autocorrelation');
    const found = autocorrelation(sharedInputs.noise, results.acf.length - 1);
    expect(mean(sharedInputs.noise)).toBeGreaterThan(90);
    results.acf.forEach((expected, lag) => {
      expect(found[lag]).toBeCloseTo(expected, 12);
    });
  });
});

describe('aliasFrequency', () => {
  for (const { id, inputs, expected, tolerance, source } of casesOf<{
    frequencyHertz: number;
    sampleRateHertz: number;
  }>('alias-frequency')) {
    it(`${id}: ${source}`, () =>
      expectWithin(aliasFrequency(inputs.frequencyHertz, inputs.sampleRateHertz), expected, tolerance));
  }
});
