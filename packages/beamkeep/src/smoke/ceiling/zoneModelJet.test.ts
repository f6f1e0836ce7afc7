import { describe, expect, it } from 'vitest';
import { ceilingJet } from './ceilingJet.js';
import { zoneModelJet, zoneModelJoin } from './zoneModelJet.js';

describe('zoneModelJet', () => {
  it('CFAST Technical Reference Guide, Ceiling Jet: 0.182 joins plume and jet at r/H = 0.2', () => {
    expect(Math.abs(zoneModelJoin(0.2) - 0.182)).toBeLessThanOrEqual(0.0005);
  });
  it('second witness: as warm as Alpert’s jet within 30 %, and up to 1.7 times as quick, from 0.3 to 1 ceiling heights', () => {
    for (const radius of [3, 5, 10]) {
      const [zone, alpert] = [zoneModelJet(500, 10, radius), ceilingJet(500, 10, radius)];
      expect(Math.abs(zone.rise / alpert.rise - 1)).toBeLessThan(0.3);
      expect(zone.speed / alpert.speed).toBeGreaterThan(1); // Alpert's, which makes smoke later, is the careful one
      expect(zone.speed / alpert.speed).toBeLessThan(1.7);
    }
  });
  it('is even near the axis', () => {
    expect(zoneModelJet(500, 10, 0)).toEqual(zoneModelJet(500, 10, 1.6));
  });
});
