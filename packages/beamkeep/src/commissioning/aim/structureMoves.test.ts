import { describe, expect, it } from 'vitest';
import { structureMoves } from './structureMoves.js';

describe('structureMoves', () => {
  it('judges each way to move against the margin; without a margin it is not known', () => {
    const moves = structureMoves({ spanMetres: 18, heightMetres: 9.4 }, 62, 0.6);
    expect(moves.map(({ verdict }) => verdict)).toEqual(['beyond', 'beyond', 'tight']);
    expect(structureMoves({ spanMetres: 18 }, 62, Number.NaN)[0]?.verdict).toBe('not known');
    expect(structureMoves({}, 62, 0.6)).toEqual([]);
  });
  it.each([
    [{ heightMetres: -9.4 }, 'heightMetres -9.4 must be above 0'],
    [{ spanMetres: 0 }, 'spanMetres 0 must be above 0'],
    [{ lengthMetres: 20, warmingKelvin: Number.NaN }, 'warmingKelvin NaN must be above 0'],
  ])('refuses %j: a negative movement would lie within every margin', (structure, says) =>
    expect(() => structureMoves(structure, 62, 0.6)).toThrow(says),
  );
  it('half of the margin is within, more is tight, more than all is beyond', () => {
    const [move] = structureMoves({ spanMetres: 18 }, 62, 1);
    if (!move) throw new Error('no move');
    const verdict = (share: number) => structureMoves({ spanMetres: 18 }, 62, move.degrees / share)[0]?.verdict;
    expect([0.49, 0.51, 0.99, 1.01].map(verdict)).toEqual(['within', 'tight', 'tight', 'beyond']);
    expect(structureMoves({ spanMetres: 18 }, 62, Number.POSITIVE_INFINITY)[0]).toMatchObject({
      share: 0,
      verdict: 'within',
    });
  });
  it('derived: a steel member of 24 m, 0.5 m deep, one face 10 K warmer, bows by 17 mm; concrete by less', () => {
    const bowed = { spanMetres: 24, depthMetres: 0.5, gradientKelvin: 10 };
    // expansion x difference / depth x span² / 8: 12e-6 x 10 / 0.5 x 576 / 8 = 17.28 mm
    expect(structureMoves(bowed, 62, 1)[1]?.millimetres).toBeCloseTo(17.28, 1);
    const stone = structureMoves({ ...bowed, material: 'concrete' }, 62, 1)[1];
    expect(stone?.millimetres).toBeLessThan(17.2);
    expect(stone?.what).toBe('a member of 24 m, 0.5 m deep, one face 10 K warmer');
  });
  it('derived: 60 m of steel that warm by 40 K grow by 28.8 mm', () => {
    const [grown] = structureMoves({ lengthMetres: 60, warmingKelvin: 40 }, 62, 1);
    expect(grown).toMatchObject({
      millimetres: expect.closeTo(28.8, 6),
      what: expect.stringContaining('shifts one end sideways'),
    });
    expect(grown?.degrees).toBeCloseTo((Math.atan(0.0288 / 62) * 180) / Math.PI, 6);
  });
  it('a ceiling below the roof bends less: its own limit', () => {
    const slope = (roof?: 'roofPlasterCeiling') => structureMoves({ spanMetres: 18, ...(roof && { roof }) }, 62, 1)[0];
    expect(slope()?.what).toContain('span/180');
    expect(slope('roofPlasterCeiling')?.what).toContain('span/360');
    expect(slope('roofPlasterCeiling')?.degrees).toBeCloseTo((slope()?.degrees as number) / 2, 2);
  });
  it('nothing is computed of which a part is not known', () => {
    expect(structureMoves({ depthMetres: 0.5, gradientKelvin: 10 }, 62, 1)).toEqual([]);
    expect(structureMoves({ spanMetres: 24, depthMetres: 0.5 }, 62, 1)).toHaveLength(1);
    expect(structureMoves({ spanMetres: 24, gradientKelvin: 10 }, 62, 1)).toHaveLength(1);
    expect(structureMoves({ lengthMetres: 60 }, 62, 1)).toEqual([]);
    expect(structureMoves({ warmingKelvin: 40 }, 62, 1)).toEqual([]);
  });
  it('each says its formula, its source and whether that was read', () => {
    const all = {
      spanMetres: 24,
      heightMetres: 9,
      depthMetres: 0.5,
      gradientKelvin: 10,
      lengthMetres: 60,
      warmingKelvin: 40,
    };
    for (const { formula, source, seen } of structureMoves(all, 62, 1)) {
      expect(formula).toContain('=');
      expect(source.length).toBeGreaterThan(5);
      expect(seen).not.toBe('');
    }
  });
  it.each([Number.POSITIVE_INFINITY, Number.NaN, -1])('a span of %f m is refused', (spanMetres) =>
    expect(() => structureMoves({ spanMetres }, 62, 1)).toThrow('must be above 0'),
  );
});
