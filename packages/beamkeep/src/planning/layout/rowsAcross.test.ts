import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ruleSetNamed } from '../rules/ruleSets.js';
import type { PlannedHall } from './hall.js';
import { apexReach, type RowDistances, rowsAcross, rowsFor } from './rowsAcross.js';

const distances: RowDistances = { betweenBeams: 15, toSide: 7.5, apexWidening: 1, apexWideningMost: 25 };
const hall = (width: number, apex?: number): PlannedHall => ({
  length: 60,
  width,
  height: 8,
  roof: apex === undefined ? { shape: 'flat' } : { shape: 'pitched', apex },
});

describe('rowsAcross', () => {
  it.each([
    ['GB 50116-2013, 6.2.15 (examination keys)', 'gb50116', 14, 7],
    ['BS 5839-1:2017, 22.3 (from memory)', 'bs5839-1', 15, 7.5],
    ['NFPA 72 annex, smooth ceilings (from memory)', 'nfpa72', 18.288, 9.144],
  ] as const)('%s: a hall of 40 m needs three rows', (_, id, between, side) => {
    const { betweenBeams, toSide } = ruleSetNamed(id).figures;
    expect([betweenBeams?.value, toSide?.value]).toEqual([between, side]);
    expect(rowsFor(40, { betweenBeams: between, toSide: side })).toBe(3);
  });

  it('BS 5839-1, clause 22 (from memory): an apex row reaches 1 % farther for each degree, at most 25 %', () => {
    const slope10 = 8 + 10 * Math.tan((10 * Math.PI) / 180);
    expect(apexReach(hall(20, slope10), distances)).toBeCloseTo(7.5 * 1.1, 10);
    expect(apexReach(hall(20, 30), distances)).toBeCloseTo(7.5 * 1.25, 10);
  });

  it('puts one row in the apex, and no other where that one covers all', () => {
    expect(rowsAcross(hall(14, 10), distances)).toEqual([{ across: 7, covers: [0, 14] }]);
    const rows = rowsAcross(hall(36, 14), distances);
    expect(rows.map(({ across }) => across)).toContain(18);
    expect(rows).toHaveLength(3);
  });

  it('law: no point of the floor is farther from its row than the rules allow, and every point is covered once', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 2, max: 120, noNaN: true }),
        fc.option(fc.double({ min: 9, max: 40, noNaN: true }), { nil: undefined }),
        fc.double({ min: 5, max: 20, noNaN: true }),
        fc.double({ min: 3, max: 10, noNaN: true }),
        (width, apex, betweenBeams, toSide) => {
          const asked = { ...distances, betweenBeams, toSide };
          const rows = rowsAcross(hall(width, apex), asked);
          let end = 0;
          for (const { across, covers } of rows) {
            expect(covers[0]).toBeCloseTo(end, 9);
            end = covers[1];
            const reach = across === width / 2 && apex !== undefined ? apexReach(hall(width, apex), asked) : toSide;
            expect(Math.max(across - covers[0], covers[1] - across)).toBeLessThanOrEqual(reach + 1e-6);
          }
          expect(end).toBeCloseTo(width, 9);
        },
      ),
      { seed: 5 },
    );
  });

  it('law: a wider hall never needs fewer rows', () => {
    for (let width = 2; width < 100; width++) {
      expect(rowsFor(width + 1, distances)).toBeGreaterThanOrEqual(rowsFor(width, distances));
    }
  });

  it('a width that is a whole number of distances needs no row more', () => {
    expect(rowsFor(45, distances)).toBe(3);
    expect(rowsFor(3 * 18.288, { betweenBeams: 18.288, toSide: 9.144 })).toBe(3);
  });
});
