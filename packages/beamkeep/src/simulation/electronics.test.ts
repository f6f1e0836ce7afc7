import { describe, expect, it } from 'vitest';
import { hiss, quietElectronics } from './electronics.js';
import { plainScenario } from './plainScenario.js';
import { scene } from './scene.js';

const set = scene(plainScenario({ samples: 20_000 }), 5);
const spread = (values: ArrayLike<number>) =>
  Math.sqrt(Array.from(values).reduce((sum, value) => sum + value * value, 0) / values.length);

describe('hiss', () => {
  it('has the spread asked for and no drift when quiet', () => {
    const { drift, noise } = hiss(quietElectronics(0.002), set, 'B1');
    expect(spread(noise)).toBeCloseTo(0.002, 4);
    expect(Math.max(...drift.map(Math.abs))).toBe(0);
  });

  it('ages, warms up and drifts with heat', () => {
    const { drift } = hiss({ ...quietElectronics(0.001), ageing: 36.525 }, set, 'B1');
    expect(drift[14_400]).toBeCloseTo(-0.01, 6); // a tenth of a per cent a day, ten days
    const warm = hiss({ ...quietElectronics(0.001), warmUp: 0.5, warmUpHours: 2 }, set, 'B1').drift;
    expect(warm[0]).toBeCloseTo(0.005, 9);
    expect(warm[120]).toBeCloseTo(0.005 * Math.exp(-1), 6);
  });

  it('has heavier tails when asked', () => {
    const far = (tails: number) => {
      const { noise } = hiss({ ...quietElectronics(0.001), tails }, set, 'B1');
      return noise.filter((value) => Math.abs(value) > 0.004).length;
    };
    expect(far(0.05)).toBeGreaterThan(far(0) + 50);
  });
});
