import { describe, expect, it } from 'vitest';
import { ceilingJet } from './ceilingJet.js';
import { zoneModelJet, zoneModelJoin } from './zoneModelJet.js';

describe('zoneModelJet', () => {
  it('CFAST Technical Reference Guide, Ceiling Jet: 0.182 joins plume and jet at r/H = 0.2', () => {
    expect(Math.abs(zoneModelJoin(0.2) - 0.182)).toBeLessThanOrEqual(0.0005);
  });
  it('second witness: agrees with Alpert within a factor of 1.5 in speed and warmth from 0.3 to 1 ceiling heights', () => {
    for (const radius of [3, 5, 10]) {
      const [zone, alpert] = [zoneModelJet(500, 10, radius), ceilingJet(500, 10, radius)];
      for (const ratio of [zone.rise / alpert.rise, zone.speed / alpert.speed]) {
        expect(ratio).toBeGreaterThan(0.67);
        expect(ratio).toBeLessThan(1.5);
      }
    }
  });
  it('is even near the axis', () => {
    expect(zoneModelJet(500, 10, 0)).toEqual(zoneModelJet(500, 10, 1.6));
  });
});
