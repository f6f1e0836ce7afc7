import { describe, expect, it } from 'vitest';
import { fuelNamed, fuelNames, ownFuel } from './fuel.js';

describe('fuels', () => {
  it('say where they come from and span what their sources span', () => {
    for (const name of fuelNames) {
      const { sootYield, heatOfCombustion, source } = fuelNamed(name);
      expect(sootYield.low).toBeLessThan(sootYield.high);
      for (const { low, value, high } of [sootYield, heatOfCombustion]) {
        expect(low).toBeGreaterThan(0);
        expect(low).toBeLessThanOrEqual(value);
        expect(high).toBeGreaterThanOrEqual(value);
      }
      expect(source).toMatch(/\((read|from memory)\)/);
    }
  });

  it('heptane differs by a factor of 2.5 between sources, and a lone source is spread as far', () => {
    const heptane = fuelNamed('heptane').sootYield;
    expect(heptane.high / heptane.low).toBeCloseTo(2.5, 1);
    const foam = fuelNamed('polyurethaneFoam').sootYield;
    expect(foam.high / foam.low).toBeCloseTo(2.5, 1);
  });

  it("the user's own count as given", () => {
    expect(ownFuel({ sootYield: 0.05, heatOfCombustion: 20 })).toMatchObject({
      words: 'own fuel',
      kind: 'flaming',
      sootYield: { value: 0.05, low: 0.05, high: 0.05 },
      radiativeShare: 0.35,
      source: 'given',
    });
  });

  it('say what must change', () => {
    expect(() => fuelNamed('petrol')).toThrow('fuel "petrol" is not known: use polyurethaneFoam');
    expect(() => ownFuel({ sootYield: 0, heatOfCombustion: 20 })).toThrow('soot yield 0 g/g must be more than 0');
    expect(() => ownFuel({ sootYield: { value: 3, low: 1, high: 2 }, heatOfCombustion: 20 })).toThrow(
      'soot yield 3 g/g must lie within its own span, 1 to 2',
    );
    expect(() => ownFuel({ sootYield: 1, heatOfCombustion: 20, radiativeShare: 1 })).toThrow('radiative share 1');
  });
});
