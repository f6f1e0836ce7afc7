import fc from 'fast-check';
import fft from 'fft-js';
import { describe, expect, it } from 'vitest';
import { normalNoise } from '../normalNoise.js';
import { fourierTransform } from './fourier.js';

/** The definition, term by term. */
function slow(real: Float64Array, imaginary: Float64Array): { re: number; im: number }[] {
  const n = real.length;
  return Array.from({ length: n }, (_, k) => {
    let re = 0;
    let im = 0;
    for (let i = 0; i < n; i++) {
      const angle = (-2 * Math.PI * ((i * k) % n)) / n;
      re += (real[i] as number) * Math.cos(angle) - (imaginary[i] as number) * Math.sin(angle);
      im += (real[i] as number) * Math.sin(angle) + (imaginary[i] as number) * Math.cos(angle);
    }
    return { re, im };
  });
}

describe('fourierTransform', () => {
  it('law: the definition, for every length', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 70 }), fc.integer(), (length, seed) => {
        const noise = normalNoise(seed);
        const real = Float64Array.from({ length }, noise);
        const imaginary = Float64Array.from({ length }, noise);
        const expected = slow(real, imaginary);
        fourierTransform(length)(real, imaginary);
        expected.forEach(({ re, im }, k) => {
          expect(real[k]).toBeCloseTo(re, 10);
          expect(imaginary[k]).toBeCloseTo(im, 10);
        });
      }),
      { seed: 71 },
    );
  });
  it('the package fft-js gives the same for a power of two', () => {
    const noise = normalNoise(72);
    const real = Float64Array.from({ length: 1024 }, noise);
    const imaginary = new Float64Array(1024);
    const expected = fft.fft([...real]);
    fourierTransform(1024)(real, imaginary);
    expected.forEach(([re, im], k) => {
      expect(real[k]).toBeCloseTo(re, 10);
      expect(imaginary[k]).toBeCloseTo(im, 10);
    });
  });
});
