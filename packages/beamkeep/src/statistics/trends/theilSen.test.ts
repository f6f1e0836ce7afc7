import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalNoise } from '../normalNoise.js';
import { listedSlopes, narrowedSlopes, type Points, pairsOf } from './slopes.js';
import { theilSen } from './theilSen.js';

/** Points in the order that the search asks for. */
function inOrder(points: readonly (readonly [number, number])[]): Points {
  const sorted = [...points].sort(([a, b], [c, d]) => a - c || b - d);
  return { x: Float64Array.from(sorted, ([x]) => x), y: Float64Array.from(sorted, ([, y]) => y) };
}

const tuple = fc.tuple(fc.integer({ min: 0, max: 20 }), fc.integer({ min: -6, max: 6 }));

describe('slopes by rank', () => {
  it('law: narrowing finds what listing finds, same points and same x included', () => {
    fc.assert(
      fc.property(fc.array(tuple, { minLength: 2, maxLength: 40 }), fc.nat(), (points, pick) => {
        const ordered = inOrder(points);
        const pairs = pairsOf(ordered);
        if (pairs === 0) return;
        const rank = pick % pairs;
        expect(narrowedSlopes(ordered, 5)(rank)).toBeCloseTo(listedSlopes(ordered)(rank), 10);
      }),
      { seed: 51 },
    );
  });
  it('the same in noise, by listing a few of the slopes only', () => {
    const noise = normalNoise(52);
    const points = inOrder(
      Array.from({ length: 900 }, (_, i): [number, number] => [i + 0.3 * noise(), 0.01 * i + noise()]),
    );
    const narrowed = narrowedSlopes(points, 3000);
    const listed = listedSlopes(points);
    for (const rank of [0, 1000, 202_275, 404_549]) expect(narrowed(rank) / listed(rank)).toBeCloseTo(1, 9);
  });
});

describe('theilSen', () => {
  it('one point in five gone wild does not bend the line of 2,000', () => {
    const noise = normalNoise(53);
    const x = Float64Array.from({ length: 2000 }, (_, i) => i);
    const y = x.map((t) => 5 - 0.02 * t + noise() + (t % 5 === 0 ? 300 : 0));
    const line = theilSen(x, y);
    expect(Math.abs(line.slope + 0.02)).toBeLessThan(0.001);
    expect(line.low).toBeLessThan(line.slope);
    expect(line.high).toBeGreaterThan(line.slope);
  });
  it('a coarse reading that hardly moves slopes by exactly nothing', () => {
    const x = Float64Array.from({ length: 4000 }, (_, i) => i);
    const line = theilSen(
      x,
      x.map((t) => (t % 7 === 0 ? 98 : 97)),
    );
    expect(line.slope).toBe(0);
    expect(line.intercept).toBe(97);
  });
  it('a flat line of many points', () => {
    const x = Float64Array.from({ length: 3000 }, (_, i) => i);
    expect(
      theilSen(
        x,
        x.map(() => 5),
      ),
    ).toEqual({ slope: 0, intercept: 5, low: 0, high: 0, n: 3000 });
  });
  it('law: follows stretching, tilting and reversing of the points', () => {
    fc.assert(
      fc.property(fc.array(tuple, { minLength: 3, maxLength: 30 }), fc.integer({ min: -5, max: 5 }), (points, tilt) => {
        const x = points.map(([a]) => a);
        const y = points.map(([, b]) => b);
        const line = theilSen(x, y);
        const tilted = theilSen(
          x,
          points.map(([a, b]) => 2 * b + tilt * a),
        );
        expect(tilted.slope).toBeCloseTo(2 * line.slope + tilt, 9);
        expect(theilSen([...x].reverse(), [...y].reverse())).toEqual(line);
      }),
      { seed: 54 },
    );
  });
  it('leaves points with something missing out', () => {
    expect(theilSen([0, 1, Number.NaN, 2], [0, Number.NaN, 7, 4])).toMatchObject({ slope: 2, n: 2 });
  });
  it('without two different x there is no slope', () => {
    expect(theilSen([1, 1], [2, 3])).toMatchObject({ slope: Number.NaN, n: 2 });
    expect(theilSen([], [])).toMatchObject({ slope: Number.NaN, n: 0 });
  });
  it('says what must change', () => expect(() => theilSen([1], [])).toThrow('1 x and 0 y must be as many'));
});
