import { describe, expect, it } from 'vitest';
import { plumeAt } from './heskestad.js';
import { axisByRegion } from './mccaffrey.js';

describe('axisByRegion', () => {
  it('Enclosure Fire Dynamics, example 4.4: 520 K at 2.5 m and 160 K at 6 m over 1690 kW', () => {
    expect(axisByRegion(1690, 2.5).region).toBe('intermittent');
    expect(Math.abs(axisByRegion(1690, 2.5).rise - 520)).toBeLessThanOrEqual(5);
    expect(Math.abs(axisByRegion(1690, 6).rise - 160)).toBeLessThanOrEqual(5);
  });
  it('flame, intermittent flame and plume follow one another', () => {
    expect([0.5, 2.5, 6].map((z) => axisByRegion(1690, z).region)).toEqual(['flame', 'intermittent', 'plume']);
  });
  it('second witness: agrees with Heskestad within a quarter in the plume', () => {
    for (const height of [8, 12, 20]) {
      const other = plumeAt({ heat: 500, radiativeShare: 0.3, diameter: 1 }, height).rise;
      expect(axisByRegion(500, height).rise / other).toBeGreaterThan(0.75);
      expect(axisByRegion(500, height).rise / other).toBeLessThan(1.25);
    }
  });
});
