import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aimLoss, gaussianLobe, type Lobe } from './lobe.js';

const shapes: readonly Lobe[] = (['gaussian', 'flat-topped', 'skirted', 'ringed'] as const).map((shape) => ({
  ...gaussianLobe,
  shape,
  power: shape === 'flat-topped' ? 3 : 2,
}));

describe('aimLoss', () => {
  it('is nothing on the peak and half the level at one half-angle, whatever the shape', () => {
    for (const lobe of shapes) {
      expect(aimLoss(lobe, 0, 0)).toBeCloseTo(0, 12);
      expect(10 ** (-aimLoss(lobe, 1, 0) / 10)).toBeCloseTo(0.5, 6);
      expect(10 ** (-aimLoss(lobe, 0, -1) / 10)).toBeCloseTo(0.5, 6);
    }
  });

  it('is quadratic for a Gaussian: 12 dB at two half-angles (12 (theta / full width)^2, antenna engineering)', () => {
    expect(aimLoss(gaussianLobe, 2, 0)).toBeCloseTo(12.04, 2);
  });

  it('law: turning farther out costs more', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...shapes),
        fc.double({ min: 0.02, max: 1.7, noNaN: true }),
        fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
        (lobe, far, direction) => {
          const out = (distance: number) =>
            aimLoss(lobe, distance * Math.cos(direction), distance * Math.sin(direction));
          expect(out(far * 1.05)).toBeGreaterThan(out(far));
        },
      ),
      { seed: 2 },
    );
  });

  it('leans and is taller than wide when asked', () => {
    expect(aimLoss({ ...gaussianLobe, lean: 0.2 }, 0.5, 0)).toBeGreaterThan(
      aimLoss({ ...gaussianLobe, lean: 0.2 }, -0.5, 0),
    );
    expect(aimLoss({ ...gaussianLobe, tall: 2 }, 0, 1)).toBeCloseTo(aimLoss(gaussianLobe, 0.5, 0), 12);
  });
});
