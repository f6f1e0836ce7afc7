import { describe, expect, it } from 'vitest';
import { obscuration } from './obscuration.js';

describe('obscuration', () => {
  it('FDS User Guide, case beam_detector: soot of 71.9 mg/m3 over 10 m hides 99.81 %', () => {
    expect(Math.abs(obscuration(8700 * 71.9e-6, 10) - 99.81)).toBeLessThanOrEqual(0.005); // as printed
  });

  it('law: two stretches in a row hide what one of their summed length hides', () => {
    const through = (path: number) => 1 - obscuration(0.02, path) / 100;
    expect(through(12) * through(50)).toBeCloseTo(through(62), 12);
  });

  it('is 0 without smoke or without a path, 100 in darkness', () => {
    expect(obscuration(0, 10)).toBeCloseTo(0, 15);
    expect(obscuration(0.5, 0)).toBe(0);
    expect(obscuration(Number.POSITIVE_INFINITY, 0)).toBe(0);
    expect(obscuration(Number.POSITIVE_INFINITY, 10)).toBe(100);
  });

  it('keeps the digits of thin smoke', () => expect(obscuration(1e-12, 1)).toBeCloseTo(1e-10 - 5e-23, 25));

  it('missing stays missing', () => {
    expect(obscuration(Number.NaN, 10)).toBeNaN();
    expect(obscuration(Number.NaN, 0)).toBeNaN();
  });

  it('says what must change', () => {
    expect(() => obscuration(0.1, -5)).toThrow('path -5 m must be 0 or more and finite');
    expect(() => obscuration(-0.1, 5)).toThrow('extinction -0.1 1/m must be 0 or more');
    expect(() => obscuration(0.1, Number.NaN)).toThrow('path NaN m must be 0 or more and finite');
  });
});
