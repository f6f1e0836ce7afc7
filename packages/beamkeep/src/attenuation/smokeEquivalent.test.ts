import { describe, expect, it } from 'vitest';
import { percentToDecibels } from './reading.js';
import { smokeEquivalent } from './smokeEquivalent.js';

describe('smokeEquivalent', () => {
  it('FDS User Guide, beam_detector at 633 nm: 99.81 % over 10 m is 0.626 1/m, 71.9 mg/m3, visibility 4.8 m', () => {
    const smoke = smokeEquivalent(percentToDecibels(99.81), 10, 633);
    expect(Math.abs(smoke.extinctionPerMetre - 0.626)).toBeLessThanOrEqual(0.003); // 99.81 is printed to 0.005
    expect(Math.abs(smoke.flamingSoot.value * 1e6 - 71.9)).toBeLessThanOrEqual(0.3);
    expect(Math.abs(smoke.reflectingSignMetres - 4.8)).toBeLessThanOrEqual(0.05);
  });

  it('an infrared beam that reads the same stands in more smoke, and one sees less far', () => {
    const red = smokeEquivalent(1.87, 100, 633);
    const infrared = smokeEquivalent(1.87, 100);
    expect(infrared.extinctionPerMetre).toBe(red.extinctionPerMetre);
    expect(infrared.flamingSoot.value / red.flamingSoot.value).toBeCloseTo(880 / 633, 12);
    expect(red.reflectingSignMetres / infrared.reflectingSignMetres).toBeCloseTo(880 / 633, 12);
    expect(infrared.lightEmittingSignMetres / infrared.reflectingSignMetres).toBeCloseTo(8 / 3, 12);
  });

  it('gives the mass within the spread of its constant (8700 +- 1100 m2/kg)', () => {
    const { value, low, high } = smokeEquivalent(1.87, 100).flamingSoot;
    expect(low / value).toBeCloseTo(8700 / 9800, 12);
    expect(high / value).toBeCloseTo(8700 / 7600, 12);
  });

  it('is clean in clean air, without end in darkness, missing where the loss is', () => {
    expect(smokeEquivalent(0, 100)).toEqual({
      extinctionPerMetre: 0,
      visibleExtinctionPerMetre: 0,
      reflectingSignMetres: Number.POSITIVE_INFINITY,
      lightEmittingSignMetres: Number.POSITIVE_INFINITY,
      flamingSoot: { value: 0, low: 0, high: 0 },
      smoulderingSoot: 0,
    });
    expect(smokeEquivalent(Number.POSITIVE_INFINITY, 100).reflectingSignMetres).toBe(0);
    expect(smokeEquivalent(Number.NaN, 100).smoulderingSoot).toBeNaN();
  });

  it('says what must change', () => {
    expect(() => smokeEquivalent(-1, 100)).toThrow('value -1 is not smoke in decibels');
    expect(() => smokeEquivalent(1, 0)).toThrow('path 0 m must be more than 0');
    expect(() => smokeEquivalent(1, 10, -880)).toThrow('wavelength -880 nm must be more than 0');
  });
});
