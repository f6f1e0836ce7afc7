import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { overfills, pathLoss, rangeCurve } from './pathLoss.js';

const retro = { divergenceDegrees: 1, receiverMetres: 0.03, reflector: { diameterMetres: 0.1, spreadDegrees: 0.5 } };
const direct = { divergenceDegrees: 1, receiverMetres: 0.03 };

describe('pathLoss', () => {
  it('derived from the inverse square: end-to-end, twice the distance costs 6.02 dB', () => {
    expect(pathLoss(direct, 100) - pathLoss(direct, 50)).toBeCloseTo(6.0206, 4);
  });

  it('derived from CIE S 017:2020, 17-24-103: a small reflector far away costs 12.04 dB for twice the distance', () => {
    expect(pathLoss(retro, 4000) - pathLoss(retro, 2000)).toBeCloseTo(12.04, 1);
  });

  it('a reflector larger than the spot costs at most 6.02 dB for twice the distance', () => {
    const large = { ...retro, reflector: { diameterMetres: 5, spreadDegrees: 0.5 } };
    expect(overfills(large, 100)).toBe(false);
    expect(pathLoss(large, 100) - pathLoss(large, 50)).toBeCloseTo(6.0206, 3);
  });

  it('costs nothing where everything that is sent comes in', () => {
    expect(pathLoss({ divergenceDegrees: 0.5, receiverMetres: 0.1 }, 1)).toBe(0);
    const near = {
      divergenceDegrees: 0.5,
      receiverMetres: 0.5,
      reflector: { diameterMetres: 0.2, spreadDegrees: 0.5 },
    };
    expect(pathLoss(near, 5)).toBe(0);
  });

  it('law: farther is never brighter, and a larger reflector never darker while the spot overfills it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 150, noNaN: true }),
        fc.double({ min: 0.05, max: 1, noNaN: true }),
        (distance, diameterMetres) => {
          const optics = { ...retro, reflector: { diameterMetres, spreadDegrees: 0.5 } };
          expect(pathLoss(optics, distance + 1)).toBeGreaterThanOrEqual(pathLoss(optics, distance));
          const larger = { ...retro, reflector: { diameterMetres: 1.1 * diameterMetres, spreadDegrees: 0.5 } };
          if (overfills(larger, distance))
            expect(pathLoss(larger, distance)).toBeLessThanOrEqual(pathLoss(optics, distance) + 1e-9);
        },
      ),
      { seed: 5 },
    );
  });

  it('draws the level against distance, from 0 dB at the nearest', () => {
    const curve = rangeCurve(retro, 5, 100, 50);
    expect(curve.decibels[0]).toBe(0);
    expect(curve.distance[0]).toBeCloseTo(5, 12);
    expect(curve.distance.at(-1)).toBeCloseTo(100, 9);
    expect(overfills(retro, curve.overfillsFrom * 1.01)).toBe(true);
    expect(overfills(retro, curve.overfillsFrom * 0.99)).toBe(false);
  });

  it('says what must change', () => {
    expect(() => pathLoss({ ...direct, divergenceDegrees: 0 }, 10)).toThrow('divergence 0 degrees');
    expect(() => pathLoss(retro, 0)).toThrow('distance 0 m');
    expect(() => pathLoss({ ...retro, reflector: { diameterMetres: 0, spreadDegrees: 1 } }, 10)).toThrow(
      'reflector 0 m',
    );
    expect(() => rangeCurve(retro, 10, 10)).toThrow('farthest 10 m must be more than nearest, 10 m');
  });
});
