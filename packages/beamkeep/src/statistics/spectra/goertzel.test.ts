import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalNoise } from '../normalNoise.js';
import { fourierTransform } from './fourier.js';
import { binOf, frequencyOf, goertzel } from './goertzel.js';

describe('goertzel', () => {
  it('law: the power of the transform at each whole bin', () => {
    fc.assert(
      fc.property(fc.integer({ min: 2, max: 80 }), fc.integer(), (length, seed) => {
        const real = Float64Array.from({ length }, normalNoise(seed));
        const imaginary = new Float64Array(length);
        const lines = Array.from({ length }, (_, bin) => goertzel(real, bin).power);
        fourierTransform(length)(real, imaginary);
        lines.forEach((power, bin) => {
          expect(power).toBeCloseTo((real[bin] as number) ** 2 + (imaginary[bin] as number) ** 2, 7);
        });
      }),
      { seed: 74 },
    );
  });
  it('law: amplitude and phase of a cosine come back', () => {
    fc.assert(
      fc.property(fc.double({ min: -3, max: 3, noNaN: true }), fc.integer({ min: 3, max: 40 }), (phase, bin) => {
        const wave = Float64Array.from(
          { length: 100 },
          (_, i) => 0.7 * Math.cos((2 * Math.PI * bin * i) / 100 - phase),
        );
        expect(goertzel(wave, bin).amplitude).toBeCloseTo(0.7, 9);
        expect(goertzel(wave, bin).phase).toBeCloseTo(phase, 8);
      }),
      { seed: 75 },
    );
  });
  it('missing samples count as 0', () =>
    expect(goertzel([1, Number.NaN, -1, 0], 1)).toEqual(goertzel([1, 0, -1, 0], 1)));
  it('bin and frequency undo each other', () =>
    expect(frequencyOf(binOf(24.3, 100, 777), 100, 777)).toBeCloseTo(24.3, 12));
});
