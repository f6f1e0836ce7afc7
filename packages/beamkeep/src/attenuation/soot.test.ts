import { describe, expect, it } from 'vitest';
import { extinctionToSoot, sootToExtinction, specificExtinction } from './soot.js';

describe('soot', () => {
  it('FDS Technical Reference Guide (Mulholland and Croarkin 2000): 8700 m2/kg at 633 nm', () => {
    expect(specificExtinction('flaming', 633)).toBe(8700);
  });

  it('from memory (Seader and Einhorn): 4400 m2/kg of smouldering smoke', () => {
    expect(specificExtinction('smouldering', 633)).toBe(4400);
  });

  it('takes less light at a longer wavelength', () => {
    expect(specificExtinction('flaming', 880)).toBeCloseTo(6258.07, 2);
  });

  it('law: mass to extinction and back', () => {
    expect(extinctionToSoot(sootToExtinction(71.9e-6, 6258), 6258)).toBeCloseTo(71.9e-6, 18);
  });

  it('missing stays missing', () => {
    expect(sootToExtinction(Number.NaN, 8700)).toBeNaN();
    expect(extinctionToSoot(Number.NaN, 8700)).toBeNaN();
  });

  it('says what must change', () => {
    expect(() => specificExtinction('flaming', 0)).toThrow('wavelength 0 nm');
    expect(() => sootToExtinction(-1, 8700)).toThrow('concentration -1 kg/m3 must be 0 or more');
    expect(() => extinctionToSoot(1, 0)).toThrow('specific extinction 0 m²/kg must be more than 0');
  });
});
