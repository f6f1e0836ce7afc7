import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { axisRise, plumeAt, volumeFlow } from './heskestad.js';

const heat = fc.double({ min: 10, max: 5000, noNaN: true });
const height = fc.double({ min: 4, max: 30, noNaN: true });
const plume = (q: number, z: number) => plumeAt({ heat: q, radiativeShare: 0.35, diameter: 0.5 }, z);

describe('plumeAt', () => {
  it('Enclosure Fire Dynamics, example 4.3: 17.19 kg/s and 140 K at 6 m over 1690 kW', () => {
    const { massFlow, rise } = plumeAt({ heat: 1690, radiativeShare: 0.3, diameter: 1.6 }, 6);
    expect(Math.abs(massFlow - 17.19)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(rise - 140)).toBeLessThanOrEqual(1);
  });

  it('law: higher up a plume moves more air, cooler and wider', () => {
    fc.assert(
      fc.property(heat, height, (q, z) => {
        const [low, high] = [plume(q, z), plume(q, z + 1)];
        if (z <= low.flame) return;
        expect(high.massFlow).toBeGreaterThan(low.massFlow);
        expect(high.rise).toBeLessThanOrEqual(low.rise);
        if (low.rise < 100) expect(high.radius).toBeGreaterThan(low.radius);
      }),
      { seed: 5 },
    );
  });

  it('law: a larger fire moves more air, and is warmer', () => {
    fc.assert(
      fc.property(heat, height, (q, z) => {
        const [small, large] = [plume(q, z), plume(1.2 * q, z)];
        expect(large.rise).toBeGreaterThanOrEqual(small.rise);
        expect(large.massFlow).toBeGreaterThan(small.massFlow * 0.99);
      }),
      { seed: 5 },
    );
  });

  it('law: its mean rise carries the convective heat', () => {
    const { massFlow, meanRise } = plume(300, 10);
    expect(massFlow * meanRise * 1.005).toBeCloseTo(195, 9);
    expect(volumeFlow(plume(300, 10))).toBeCloseTo(massFlow / (1.204 * (293.15 / (293.15 + meanRise))), 9);
  });

  it('is never warmer than 900 K, nor faster than about 2 Qc^(1/5)', () => {
    expect(axisRise(1000, 0.01)).toBe(900);
    expect(axisRise(1000, -1)).toBe(900);
    const near = plume(1000, 0.1);
    expect(near.rise).toBeLessThanOrEqual(900);
    expect(near.speed).toBeLessThanOrEqual(2 * 650 ** 0.2);
  });

  it('says what must change', () => {
    expect(() => plume(0, 5)).toThrow('heat release rate 0 kW');
    expect(() => plume(100, 0)).toThrow('height 0 m');
    expect(() => plumeAt({ heat: 1, radiativeShare: 1, diameter: 1 }, 1)).toThrow('radiative share 1');
    expect(() => plumeAt({ heat: 1, radiativeShare: 0, diameter: 0 }, 1)).toThrow('diameter 0 m');
  });
});
