import { describe, expect, it } from 'vitest';
import { apertureShare, spotWidths } from './gaussianBeam.js';

const irradiance = (r: number, w: number) => Math.exp((-2 * r * r) / (w * w));

describe('spotWidths', () => {
  it('each width stands where its name says', () => {
    const { halfPowerHalfWidth, fullWidthHalfMaximum, radiusAtInverseE, standardDeviation } = spotWidths(3);
    expect(irradiance(halfPowerHalfWidth, 3)).toBeCloseTo(0.5, 12);
    expect(irradiance(fullWidthHalfMaximum / 2, 3)).toBeCloseTo(0.5, 12);
    expect(irradiance(radiusAtInverseE, 3)).toBeCloseTo(1 / Math.E, 12);
    expect(irradiance(standardDeviation, 3)).toBeCloseTo(Math.exp(-0.5), 12);
  });
});

describe('apertureShare', () => {
  it('half of the power passes the half-power radius', () =>
    expect(apertureShare(spotWidths(2).halfPowerHalfWidth, 2)).toBeCloseTo(0.5, 12));
  it('a pinhole keeps its digits: 2 (a / w)^2', () => expect(apertureShare(1e-9, 1) / 2e-18).toBeCloseTo(1, 12));
});
