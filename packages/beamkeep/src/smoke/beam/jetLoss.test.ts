import { describe, expect, it } from 'vitest';
import { ceilingJet } from '../ceiling/ceilingJet.js';
import { jetExtinction, jetPieces } from './jetLoss.js';

describe('a beam in the ceiling jet', () => {
  it('second witness: smoke by warmth and smoke by the flow of the jet agree within a third', () => {
    for (const radius of [3, 5, 10]) {
      const byWarmth = jetExtinction({ convectiveHeat: 195, smokeRate: 2.2e-3 }, 10, radius, 8700);
      const { speed, depth } = ceilingJet(195, 10, radius);
      const byFlow = (8700 * 2.2e-3) / (2 * Math.PI * radius * depth * speed);
      expect(byWarmth / byFlow).toBeGreaterThan(0.66);
      expect(byWarmth / byFlow).toBeLessThan(1.5);
    }
  });

  it('is cut into pieces that add up to the beam within two ceiling heights', () => {
    const pieces = jetPieces(10, { below: 0.3, aside: 0, ends: [8, 50] });
    expect(pieces.reduce((sum, { length }) => sum + length, 0)).toBeCloseTo(8 + 20, 9);
    expect(Math.max(...pieces.map(({ radius }) => radius))).toBeLessThan(20);
  });

  it('no piece lies nearer to the axis than the beam', () => {
    const pieces = jetPieces(10, { below: 0.3, aside: 7.5, ends: [30, 30] });
    expect(Math.min(...pieces.map(({ radius }) => radius))).toBeGreaterThanOrEqual(7.5);
  });

  it('is not met too far below the ceiling, nor too far aside', () => {
    expect(jetPieces(10, { below: 1.2, aside: 5, ends: [30, 30] })).toEqual([]);
    expect(jetPieces(10, { below: 0.3, aside: 20, ends: [30, 30] })).toEqual([]);
  });
});
