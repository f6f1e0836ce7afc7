import { describe, expect, it } from 'vitest';
import { opticalRange, visibility, visualRange, visualRangeToExtinction } from './visibility.js';

describe('visibility', () => {
  it('has no end in clean air and none is left in darkness', () => {
    expect(visibility(0)).toBe(Number.POSITIVE_INFINITY);
    expect(visibility(Number.POSITIVE_INFINITY)).toBe(0);
    expect(visualRange(0)).toBe(Number.POSITIVE_INFINITY);
    expect(visualRangeToExtinction(Number.POSITIVE_INFINITY)).toBe(0);
    expect(opticalRange(1, 75)).toBe(Number.POSITIVE_INFINITY);
    expect(opticalRange(0, 75)).toBe(0);
  });

  it('AMS Glossary: visual range is 2.996 over the extinction', () => {
    expect(Math.abs(visualRange(1) - 2.996)).toBeLessThanOrEqual(0.0005); // as printed
  });

  it('law: visual range to extinction and back', () => {
    expect(visualRangeToExtinction(visualRange(0.003, 0.02), 0.02)).toBeCloseTo(0.003, 15);
  });

  it('missing stays missing', () => {
    expect(visibility(Number.NaN)).toBeNaN();
    expect(visualRange(Number.NaN)).toBeNaN();
    expect(visualRangeToExtinction(Number.NaN)).toBeNaN();
    expect(opticalRange(Number.NaN, 75)).toBeNaN();
  });

  it('says what must change', () => {
    expect(() => visibility(-1)).toThrow('extinction -1 1/m must be 0 or more');
    expect(() => visibility(1, 0)).toThrow('sign 0 must be more than 0');
    expect(() => visualRange(1, 1)).toThrow('contrast is 1: it must lie between 0 and 1');
    expect(() => visualRange(1, 0)).toThrow('contrast is 0: it must lie between 0 and 1');
    expect(() => visualRangeToExtinction(0)).toThrow('visual range is 0 m: it must be more than 0');
    expect(() => opticalRange(1.1, 75)).toThrow('transmittance is 1.1: it must be from 0 to 1');
    expect(() => opticalRange(-0.1, 75)).toThrow('transmittance is -0.1: it must be from 0 to 1');
    expect(() => opticalRange(0.5, Number.POSITIVE_INFINITY)).toThrow(
      'baseline Infinity m must be more than 0 and finite',
    );
    expect(() => opticalRange(0.5, 0)).toThrow('baseline 0 m must be more than 0');
  });
});
