import { describe, expect, it } from 'vitest';
import { everyUnit } from './everyUnit.js';

const beam = { layout: 'reflective', separation: 50, wavelength: 880 } as const;

describe('everyUnit', () => {
  it('counts the path twice for a reflective beam', () => {
    const reflective = everyUnit(35, beam);
    const single = everyUnit(35, { ...beam, layout: 'end-to-end' });
    expect(reflective.pathMetres).toBe(100);
    expect(reflective.units.decibels).toBeCloseTo(1.8709, 4);
    expect(reflective.units['decibels-per-metre']).toBeCloseTo(0.018709, 6);
    expect(single.units['decibels-per-metre']).toBeCloseTo(0.037417, 6);
  });
  it('says what every unit says of the same smoke', () => {
    const { units } = everyUnit(50, beam);
    expect(units.transmittance).toBeCloseTo(0.5, 12);
    expect(units['optical-density']).toBeCloseTo(0.30103, 5);
    expect(units['extinction-per-metre']).toBeCloseTo(Math.LN2 / 100, 12);
    expect(units['percent-per-foot']).toBeCloseTo(100 * (1 - 0.5 ** 0.003048), 9);
  });
  it('carries the wavelength into what an eye would see', () => {
    const infrared = everyUnit(35, beam).smoke;
    const red = everyUnit(35, { ...beam, wavelength: 633 }).smoke;
    expect(red.visibleExtinctionPerMetre).toBeCloseTo(red.extinctionPerMetre, 12);
    expect(infrared.visibleExtinctionPerMetre).toBeGreaterThan(infrared.extinctionPerMetre);
  });
});
