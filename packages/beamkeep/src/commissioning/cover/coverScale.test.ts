import { describe, expect, it } from 'vitest';
import { coverScale } from './coverScale.js';

const square = { shape: 'rectangle', width: 100 } as const;

describe('coverScale', () => {
  it('an evenly lit rectangle of 100 mm has its per cent in millimetres', () => {
    const { marks } = coverScale(square);
    expect(marks).toHaveLength(19);
    for (const { obscuration, millimetres } of marks) expect(millimetres).toBeCloseTo(obscuration, 6);
  });
  it('a disc of 100 mm is half covered at 50 mm and 19.55 % covered at 25 mm', () => {
    const { marks } = coverScale({ shape: 'round', diameter: 100 }, undefined, 'edge', [19.5501109477885, 50]);
    expect(marks[0]?.millimetres).toBeCloseTo(25, 6);
    expect(marks[1]?.millimetres).toBeCloseTo(50, 6);
  });
  it('from the middle of a lit reflector less is needed than from its edge', () => {
    const lit = { halfPowerRadius: 60 };
    const [edge] = coverScale(square, lit, 'edge', [35]).marks;
    const [middle] = coverScale(square, lit, 'middle', [35]).marks;
    expect(middle?.millimetres).toBeLessThan(edge?.millimetres as number);
  });
  it('is drawn in millimetres, each mark in its place', () => {
    const { drawing } = coverScale(square, undefined, 'edge', [30, 35]);
    expect(drawing).toMatch(/width="166\.00mm".*viewBox="0 0 166\.00 /s);
    expect(drawing).toContain('<line x1="38.00"'); // 8 mm of margin and 30 mm of cover
    expect(drawing).toContain('<line x1="43.00"');
    expect(drawing).toContain('This bar is 50 mm');
  });
  it('marks both sides of a cover from the middle', () => {
    const { drawing } = coverScale(square, undefined, 'middle', [50]);
    expect(drawing).toContain('<line x1="33.00"');
    expect(drawing).toContain('<line x1="83.00"');
  });
  it('says how it is lit', () => {
    expect(coverScale(square).drawing).toContain('evenly lit');
    expect(coverScale(square, { halfPowerRadius: 60 }).drawing).toContain('lit by the lobe');
  });
  it('refuses marks of nothing and of all, wherever they stand among others', () => {
    for (const marks of [[0], [100], [-5, 50], [50, 100], [Number.NaN]])
      expect(() => coverScale(square, undefined, 'edge', marks)).toThrow('above 0 and below 100');
  });
});
