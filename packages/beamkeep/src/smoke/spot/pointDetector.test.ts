import { describe, expect, it } from 'vitest';
import { chamberDelay, chamberShare } from './pointDetector.js';

describe('point detectors', () => {
  it('FDS Technical Reference Guide: 63 % in the chamber after L/u', () => {
    expect(chamberShare(7.2, 0.25)).toBeCloseTo(1 - 1 / Math.E, 12);
    expect(chamberShare(0, 0.25)).toBe(0);
  });
  it('FDS User Guide, suggested values: smoke needs 9 s to enter at 0.2 m/s', () => {
    expect(chamberDelay('photoelectric1', 0.2).entry).toBeCloseTo(9, 9);
  });
  it('law: slower air, later smoke', () => {
    for (const detector of ['ionisation1', 'ionisation2', 'photoelectric1', 'photoelectric2'] as const) {
      expect(chamberDelay(detector, 0.1).entry).toBeGreaterThan(chamberDelay(detector, 0.2).entry);
      expect(chamberDelay(detector, 0.1).filling).toBeGreaterThan(chamberDelay(detector, 0.2).filling);
    }
  });
  it('says what must change', () => expect(() => chamberShare(1, 0)).toThrow('air speed 0 m/s'));
});
