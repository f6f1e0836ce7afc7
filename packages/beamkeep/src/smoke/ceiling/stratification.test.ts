import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { leastFire, riseHeight, warmestLayer, warmestRoof } from './stratification.js';

describe('stratification', () => {
  it('NFPA 92B, 2000, A.3.4, in the NUREG-1805 spreadsheet: 700 kW under 13 ft overcome 1375.9 degF', () => {
    expect(Math.abs(1.8 * warmestRoof(700, 3.9624) - 1375.9)).toBeLessThanOrEqual(1);
  });
  it('NFPA 92 (from memory): 200 kW in 1 K/m stop at 20.8 m', () => {
    expect(riseHeight(200, 1)).toBeCloseTo(20.83, 2);
    expect(riseHeight(200, 0)).toBe(Number.POSITIVE_INFINITY);
  });
  it('a summer roof 10 K warmer over 20 m asks for more than 60 kW', () => {
    expect(leastFire(10, 20)).toBeCloseTo(60, 0);
  });
  it('law: the two forms of the hot roof are each other’s way back', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1, max: 2000, noNaN: true }),
        fc.double({ min: 3, max: 40, noNaN: true }),
        (heat, ceiling) => {
          expect(leastFire(warmestRoof(heat, ceiling), ceiling) / heat).toBeCloseTo(1, 9);
        },
      ),
      { seed: 5 },
    );
  });
  it('both equations agree within 0.2 %: an even gradient up to the roof is warmer there by gradient times height', () => {
    for (const heat of [20, 200, 2000]) {
      const height = riseHeight(heat, 0.5);
      expect(warmestRoof(heat, height) / (0.5 * height)).toBeCloseTo(1, 2);
    }
  });
  it('CFAST, Weak Plumes: a plume enters a layer no warmer than itself', () => {
    expect(warmestLayer(293, 10, 5, 1)).toBe(295);
  });
  it('says what must change', () => expect(() => riseHeight(1, -1)).toThrow('temperature gradient -1 K/m'));
});
