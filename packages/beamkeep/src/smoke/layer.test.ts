import { describe, expect, it } from 'vitest';
import { hallAir } from './air.js';
import { steadyFire } from './fire/designFire.js';
import { fuelNamed, ownFuel } from './fire/fuel.js';
import { layerFilling, lifts } from './layer.js';
import { flowFactor } from './plume/heskestad.js';

describe('layerFilling', () => {
  it('Zukoski: a point plume of steady heat sinks the face as z = (H^(-2/3) + 2/3 C Q^(1/3) t/(rho A))^(-3/2)', () => {
    const heat = 50;
    const fire = steadyFire(heat, ownFuel({ sootYield: 0.01, heatOfCombustion: 12, radiativeShare: 0 }));
    // Diameter at which the virtual origin lies in the fuel; the second term of the mass flow counts as heat here.
    const diameter = (0.083 * heat ** 0.4) / 1.02;
    const layers = layerFilling(fire, diameter, { area: 500, ceiling: 10 }, 120);
    const factor = (2 / 3) * flowFactor(hallAir) * Math.cbrt(heat);
    for (const second of [30, 60, 120]) {
      const closed = (10 ** (-2 / 3) + (factor * second) / (hallAir.density * 500)) ** -1.5;
      expect(Math.abs((layers[second]?.face ?? Number.NaN) / closed - 1)).toBeLessThan(0.02);
    }
  });

  it('law: no smoke is lost', () => {
    const fire = steadyFire(80, fuelNamed('wood'));
    const last = layerFilling(fire, 0.5, { area: 600, ceiling: 9 }, 200)[200];
    if (last === undefined) throw new Error('no layer');
    expect(last.concentration * 600 * (last.top - last.face) + last.mixed * 600 * 9).toBeCloseTo(
      200 * fire.smoke(1),
      12,
    );
  });

  it('a fire too weak to lift its smoke fills the whole hall with haze', () => {
    const fire = steadyFire(1, fuelNamed('wood'));
    expect(lifts(1, fire, 0.3, 15)).toBe(false);
    const last = layerFilling(fire, 0.3, { area: 600, ceiling: 15 }, 100)[100];
    expect(last).toMatchObject({ concentration: 0, top: 0, face: 0 });
    expect(last?.mixed).toBeCloseTo((100 * fire.smoke(1)) / 9000, 15);
  });

  it('hangs where warm air stops the plume, and grows upward when the fire does', () => {
    const fire = steadyFire(80, fuelNamed('wood'));
    const layers = layerFilling(fire, 0.5, { area: 600, ceiling: 12 }, 100, {
      spreadsAt: (second) => (second < 50 ? 6 : 12),
    });
    expect(layers[40]?.top).toBe(6);
    expect(layers[60]?.top).toBe(12);
    expect(layers[60]?.face).toBeLessThan(6);
  });

  it('never sinks into its own fire', () => {
    const face = layerFilling(steadyFire(1000, fuelNamed('wood')), 1, { area: 20, ceiling: 3 }, 600)[600]?.face;
    expect(face).toBe(0.1);
  });
});
