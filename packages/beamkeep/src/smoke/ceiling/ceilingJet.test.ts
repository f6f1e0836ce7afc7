import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ceilingJet, jetDepth, jetFire } from './ceilingJet.js';

describe('ceilingJet', () => {
  it('Alpert: 16.9 Q^(2/3)/H^(5/3) on the axis', () => {
    expect(ceilingJet(1000, 10, 0).rise).toBeCloseTo((16.9 * 100) / 10 ** (5 / 3), 10);
  });
  it('CFAST Technical Reference Guide: 0.10 H deep at r/H = 1', () => {
    expect(jetDepth(10, 10)).toBeCloseTo(1.0, 1);
  });
  it('law: the way back leads back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 2000, noNaN: true }),
        fc.double({ min: 3, max: 20, noNaN: true }),
        fc.double({ min: 0, max: 30, noNaN: true }),
        (heat, ceiling, radius) => {
          expect(jetFire(ceilingJet(heat, ceiling, radius).rise, ceiling, radius) / heat).toBeCloseTo(1, 9);
        },
      ),
      { seed: 5 },
    );
  });
  it('law: farther out it is cooler, slower and deeper', () => {
    for (let radius = 2; radius < 20; radius++) {
      const [near, far] = [ceilingJet(300, 10, radius), ceilingJet(300, 10, radius + 1)];
      expect(far.rise).toBeLessThanOrEqual(near.rise);
      expect(far.speed).toBeLessThan(near.speed);
      expect(far.depth).toBeGreaterThanOrEqual(near.depth);
    }
  });
  it('says what must change', () => {
    expect(() => ceilingJet(0, 10, 1)).toThrow('heat release rate 0 kW');
    expect(() => ceilingJet(1, 10, -1)).toThrow('radius -1 m');
    expect(() => jetFire(0, 10, 1)).toThrow('temperature rise 0 K');
  });
});
