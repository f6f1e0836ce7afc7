import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { lobeAngle, lobeLoss, pointingLoss, superGaussianLoss } from './lobe.js';

const angle = fc.double({ min: -5, max: 5, noNaN: true });
const halfAngle = fc.double({ min: 0.05, max: 5, noNaN: true });

describe('lobeLoss and lobeAngle', () => {
  it('law: half the level at the half-angle', () => {
    fc.assert(
      fc.property(halfAngle, (h) => {
        expect(10 ** (-lobeLoss(h, h) / 10)).toBeCloseTo(0.5, 12);
      }),
      { seed: 85 },
    );
  });
  it('law: each undoes the other', () => {
    fc.assert(
      fc.property(angle, halfAngle, (a, h) => {
        expect(lobeAngle(lobeLoss(a, h), h)).toBeCloseTo(Math.abs(a), 9);
      }),
      { seed: 86 },
    );
  });
  it('law: twice as far off costs four times as much, two lobes twice', () => {
    fc.assert(
      fc.property(angle, halfAngle, (a, h) => {
        expect(lobeLoss(2 * a, h)).toBeCloseTo(4 * lobeLoss(a, h), 6);
        expect(lobeLoss(a, h, 2)).toBeCloseTo(2 * lobeLoss(a, h), 6);
      }),
      { seed: 87 },
    );
  });
  it('missing stays missing; a gain has no angle', () => {
    expect(lobeLoss(Number.NaN, 1)).toBeNaN();
    expect(lobeAngle(-1, 1)).toBeNaN();
  });
  it('says what must change', () => expect(() => lobeLoss(0.1, 0)).toThrow('half-angle 0 must be above 0'));
});

describe('superGaussianLoss', () => {
  it('law: 3.01 dB at the half-angle whatever the power, a Gaussian at 2', () => {
    fc.assert(
      fc.property(angle, halfAngle, fc.double({ min: 1, max: 12, noNaN: true }), (a, h, power) => {
        expect(superGaussianLoss(h, h, power)).toBeCloseTo(lobeLoss(h, h), 12);
        expect(superGaussianLoss(a, h, 2)).toBeCloseTo(lobeLoss(a, h), 6);
      }),
      { seed: 88 },
    );
  });
});

describe('pointingLoss', () => {
  it('law: the rounded factor gives 0.34 % less than the Gaussian', () => {
    fc.assert(
      fc.property(fc.double({ min: 0.1, max: 5, noNaN: true }), halfAngle, (a, h) => {
        expect(pointingLoss(a, 2 * h) / lobeLoss(a, h)).toBeCloseTo(12 / (40 * Math.log10(2)), 12);
      }),
      { seed: 89 },
    );
  });
  it('says what must change, of the half-angle that it works with', () =>
    expect(() => pointingLoss(0.1, -4)).toThrow('half-angle -2 must be above 0'));
});
