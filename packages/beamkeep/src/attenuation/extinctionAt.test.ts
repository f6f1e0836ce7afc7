import { describe, expect, it } from 'vitest';
import { extinctionAt } from './extinctionAt.js';

describe('extinctionAt', () => {
  it('an 880 nm beam sees 0.72 of what is measured at 633 nm (Widmann 2003, as 1/wavelength)', () => {
    expect(Math.abs(extinctionAt(1, 633, 880) - 0.72)).toBeLessThanOrEqual(0.005);
  });

  it('Widmann 2003, 4.8081 wavelength^-1.0088: 1/wavelength stays within 0.4 % between 633 and 950 nm', () => {
    const fitted = (micrometres: number) => 4.8081 * micrometres ** -1.0088;
    for (const nanometres of [700, 850, 880, 950]) {
      const share = fitted(nanometres / 1000) / fitted(0.633);
      expect(Math.abs(extinctionAt(1, 633, nanometres) / share - 1)).toBeLessThanOrEqual(0.004);
    }
  });

  it('law: there and back', () => expect(extinctionAt(extinctionAt(0.3, 633, 880), 880, 633)).toBeCloseTo(0.3, 14));

  it('missing stays missing', () => expect(extinctionAt(Number.NaN, 633, 880)).toBeNaN());

  it('says what must change', () => {
    expect(() => extinctionAt(-1, 633, 880)).toThrow('extinction -1 must be 0 or more');
    expect(() => extinctionAt(1, 0, 880)).toThrow('wavelength 0 nm must be more than 0');
    expect(() => extinctionAt(1, 633, Number.NaN)).toThrow('wavelength NaN nm must be more than 0');
  });
});
