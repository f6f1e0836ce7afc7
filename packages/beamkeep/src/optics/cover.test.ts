import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { coverFromEdge, coverFromMiddle, coverObscuration, edgeInSpot, edgeOnDisc, type Reflector } from './cover.js';

const reflector = fc.oneof(
  fc.record({ shape: fc.constant('rectangle' as const), width: fc.double({ min: 20, max: 400, noNaN: true }) }),
  fc.record({ shape: fc.constant('round' as const), diameter: fc.double({ min: 20, max: 400, noNaN: true }) }),
);
const lighting = fc.option(
  fc.record({
    halfPowerRadius: fc.double({ min: 20, max: 900, noNaN: true }),
    offset: fc.double({ min: -100, max: 100, noNaN: true }),
  }),
  { nil: undefined },
);
const percent = fc.double({ min: 0, max: 100, noNaN: true });
const half = (one: Reflector) => (one.shape === 'rectangle' ? one.width : one.diameter) / 2;

describe('coverObscuration', () => {
  it('law: two strips side by side hide what both hide together; all hides all', () => {
    const place = fc.double({ min: -1, max: 1, noNaN: true });
    fc.assert(
      fc.property(reflector, lighting, place, place, (one, light, a, b) => {
        const [low, high] = [Math.min(a, b) * half(one), Math.max(a, b) * half(one)];
        const parts = [
          { from: -Infinity, to: low },
          { from: low, to: high },
          { from: high, to: Infinity },
        ].map((strip) => coverObscuration(one, strip, light));
        expect(parts.reduce((sum, part) => sum + part, 0)).toBeCloseTo(100, 6);
        for (const part of parts) expect(part).toBeGreaterThanOrEqual(-1e-9);
      }),
      { seed: 95 },
    );
  });
  it('law: a lobe much wider than the reflector lights it evenly', () => {
    fc.assert(
      fc.property(reflector, fc.double({ min: -1, max: 1, noNaN: true }), (one, a) => {
        const strip = { from: -Infinity, to: a * half(one) };
        const wide = coverObscuration(one, strip, { halfPowerRadius: 1e5 });
        expect(Math.abs(wide - coverObscuration(one, strip))).toBeLessThan(0.01);
      }),
      { seed: 96 },
    );
  });
  it('a narrow lobe on a round reflector is the knife edge in a free spot', () => {
    const found = coverObscuration({ shape: 'round', diameter: 1000 }, { from: 20, to: 500 }, { halfPowerRadius: 40 });
    expect(found).toBeCloseTo(edgeInSpot((20 * 0.5887050112577373) / 40), 6);
  });
  it('half of the area hides more than half of the light where the lobe stands on it', () => {
    const strip = { from: -Infinity, to: 0 };
    expect(
      coverObscuration({ shape: 'rectangle', width: 100 }, strip, { halfPowerRadius: 60, offset: -30 }),
    ).toBeGreaterThan(60);
  });
  it('what lies beyond the reflector counts for nothing', () => {
    expect(coverObscuration({ shape: 'round', diameter: 100 }, { from: 60, to: 90 })).toBe(0);
    expect(coverObscuration({ shape: 'rectangle', width: 100 }, { from: -90, to: 90 })).toBe(100);
  });
  it('says what must change', () => {
    expect(() => coverObscuration({ shape: 'round', diameter: 0 }, { from: 0, to: 1 })).toThrow(
      '0 mm, must be above 0',
    );
    expect(() =>
      coverObscuration({ shape: 'round', diameter: 9 }, { from: 0, to: 1 }, { halfPowerRadius: -1 }),
    ).toThrow('half-power radius -1 mm must be above 0');
  });
});

describe('coverFromEdge and coverFromMiddle', () => {
  it('law: the cover of the width they give hides what was asked for', () => {
    fc.assert(
      fc.property(percent, reflector, lighting, (asked, one, light) => {
        const edge = coverFromEdge(asked, one, light);
        const middle = coverFromMiddle(asked, one, light);
        const strips = [
          { from: -half(one), to: edge - half(one) },
          { from: -middle / 2, to: middle / 2 },
        ];
        for (const strip of strips) expect(coverObscuration(one, strip, light)).toBeCloseTo(asked, 5);
      }),
      { seed: 97 },
    );
  });
  it('says what must change', () =>
    expect(() => coverFromEdge(101, { shape: 'round', diameter: 9 })).toThrow(
      'obscuration 101 % must lie from 0 to 100',
    ));
});

describe('edgeOnDisc', () => {
  it('law: two edges from opposite sides leave nothing between them', () => {
    fc.assert(
      fc.property(fc.double({ min: -1, max: 1, noNaN: true }), (q) => {
        expect(edgeOnDisc(q) + edgeOnDisc(-q)).toBeCloseTo(100, 10);
      }),
      { seed: 98 },
    );
  });
  it('beyond the rim: nothing, or all', () => expect([edgeOnDisc(1.5), edgeOnDisc(-1.5)]).toEqual([0, 100]));
});
