import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { angleOfDisplacement, deflection, displacementOfAngle, drift, thermalBow, thermalGrowth } from './structure.js';

describe('angleOfDisplacement and displacementOfAngle', () => {
  it('law: each undoes the other', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 2000, noNaN: true }),
        fc.double({ min: 1, max: 200, noNaN: true }),
        (mm, m) => {
          const { degrees, milliradians } = angleOfDisplacement(mm, m);
          expect(displacementOfAngle(degrees, m)).toBeCloseTo(mm, 8);
          expect((milliradians * 180) / Math.PI / 1000).toBeCloseTo(degrees, 12);
        },
      ),
      { seed: 103 },
    );
  });
});

describe('movement of a structure', () => {
  it('law: twice the span bows four times as far and turns its ends twice as much', () => {
    const [short, long] = [thermalBow(12e-6, 10, 0.5, 12), thermalBow(12e-6, 10, 0.5, 24)];
    expect(long.midspanMillimetres).toBeCloseTo(4 * short.midspanMillimetres, 12);
    expect(long.endSlopeDegrees).toBeCloseTo(2 * short.endSlopeDegrees, 12);
  });
  it('law: growth is the sum of growths', () =>
    expect(thermalGrowth(12e-6, 30, 5) + thermalGrowth(12e-6, 70, 5)).toBeCloseTo(thermalGrowth(12e-6, 100, 5), 12));
  it('a load turns the ends less than warmth that moves the middle as far: 3.2 against 4 over the span', () => {
    const load = deflection(24, 240);
    const warmth = thermalBow(1, (8 * 0.1) / 24 ** 2, 1, 24);
    expect(warmth.midspanMillimetres).toBeCloseTo(load.midspanMillimetres, 9);
    expect(load.endSlopeMilliradians / warmth.endSlopeMilliradians).toBeCloseTo(3.2 / 4, 12);
  });
  it('a frame turns by its drift over its height', () =>
    expect(Math.tan((drift(8, 100).rotationDegrees * Math.PI) / 180)).toBeCloseTo(0.01, 15));
});
