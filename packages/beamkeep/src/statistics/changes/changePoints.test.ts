import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalNoise } from '../normalNoise.js';
import { type ChangeOptions, changePoints, segmentation } from './changePoints.js';

/*
 * The slow, plain way: every way to cut, every choice of wild readings, and for each the levels that cost least, by
 * elimination in the tridiagonal equations of readings and drift.
 */
function leastCost(values: readonly number[], bound: number, stiffness: number, penalty: number): number {
  const best = [-penalty];
  for (let to = 1; to <= values.length; to++) {
    const ways = Array.from({ length: to }, (_, from) => {
      const piece = values.slice(from, to);
      return (best[from] as number) + penalty + pieceCost(piece, bound, stiffness);
    });
    best.push(Math.min(...ways));
  }
  return best[values.length] as number;
}

function pieceCost(values: readonly number[], bound: number, stiffness: number): number {
  let best = Infinity;
  const choices = Number.isFinite(bound) ? 2 ** values.length : 1;
  for (let wild = 0; wild < choices; wild++) {
    const isWild = (i: number) => Math.floor(wild / 2 ** i) % 2 === 1;
    const tame = values.flatMap((value, i) => (isWild(i) ? [] : [{ value, i }]));
    const bounded = (values.length - tame.length) * bound ** 2;
    best = Math.min(best, (tame.length === values.length ? 0 : bounded) + levelCost(tame, stiffness));
  }
  return best;
}

function levelCost(tame: readonly { value: number; i: number }[], stiffness: number): number {
  // forward elimination of the levels, one reading after the other: curvature, centre and least of a parabola
  let [curvature, centre, least] = [0, 0, 0];
  tame.forEach(({ value, i }, k) => {
    const gap = k === 0 ? 1 : i - (tame[k - 1]?.i ?? i);
    const after = curvature / (1 + (curvature * gap) / stiffness);
    least += after === 0 ? 0 : ((value - centre) ** 2 * after) / (after + 1);
    centre = (centre * after + value) / (after + 1);
    curvature = after + 1;
  });
  return least;
}

const few = fc.array(fc.oneof(fc.integer({ min: -4, max: 4 }), fc.double({ min: -6, max: 6, noNaN: true })), {
  minLength: 1,
  maxLength: 7,
});
const penalty = fc.double({ min: 0.1, max: 12, noNaN: true });
const drift = fc.double({ min: 0.05, max: 2, noNaN: true });

function reaches(values: readonly number[], options: ChangeOptions): void {
  const bound = options.cost === 'l2' ? Infinity : (options.bound ?? 3);
  const stiffness = (options.scale / (options.drift ?? 0)) ** 2;
  const scaled = values.map((value) => value / options.scale);
  const expected = leastCost(scaled, bound, stiffness, options.penalty);
  expect(segmentation(values, options).cost).toBeCloseTo(expected, 7);
}

/** Levels held for so many rows each, in noise. */
function stairs(levels: readonly (readonly [level: number, rows: number])[], noise: () => number): Float64Array {
  return Float64Array.from(levels.flatMap(([level, rows]) => Array.from({ length: rows }, () => level + noise())));
}

describe('changePoints', () => {
  it('law: no cut costs less, squared error', () => {
    fc.assert(
      fc.property(few, penalty, (values, p) => reaches(values, { penalty: p, scale: 1, cost: 'l2' })),
      { seed: 41 },
    );
  });
  it('law: no cut costs less, bounded error', () => {
    fc.assert(
      fc.property(few, penalty, (values, p) => reaches(values, { penalty: p, scale: 1.5, bound: 1.7 })),
      { seed: 42 },
    );
  });
  it('law: no cut costs less, squared error and drift', () => {
    fc.assert(
      fc.property(few, penalty, drift, (values, p, d) => {
        reaches(values, { penalty: p, scale: 1, cost: 'l2', drift: d });
      }),
      { seed: 43 },
    );
  });
  it('law: no cut costs less, bounded error and drift', () => {
    fc.assert(
      fc.property(few, penalty, drift, (values, p, d) => {
        reaches(values, { penalty: p, scale: 1, bound: 1.5, drift: d });
      }),
      { seed: 44, numRuns: 300 },
    );
  });
  it('law: missing rows shift the rows of the jumps and change nothing else', () => {
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 1, maxLength: 30 }), penalty, (values, p) => {
        const options: ChangeOptions = { penalty: p, scale: 1 };
        const spaced = values.flatMap((value, i) => (i % 3 === 0 ? [Number.NaN, value] : [value]));
        const shifted = changePoints(values, options).map((row) => row + Math.floor(row / 3) + 1);
        expect(changePoints(spaced, options)).toEqual(shifted);
      }),
      { seed: 45 },
    );
  });
  it('finds steps of three spreads in noise with wild readings, and no others', () => {
    const noise = normalNoise(46);
    const values = stairs(
      [
        [0, 400],
        [3, 300],
        [1, 500],
        [1.8, 800],
      ],
      noise,
    ).map((value, i) => (i % 90 === 7 ? value + 25 : value));
    const found = changePoints(values, { penalty: 4 * Math.log(2000), scale: 1 });
    expect(found).toHaveLength(3);
    [400, 700, 1200].forEach((row, k) => {
      expect(Math.abs((found[k] as number) - row)).toBeLessThanOrEqual(k === 2 ? 25 : 4);
    });
  });
  it('a slow slope is cut into stairs without drift and left whole with it, the jump in it found either way', () => {
    const noise = normalNoise(47);
    const values = Float64Array.from({ length: 3000 }, (_, i) => 0.004 * i - (i < 1500 ? 0 : 4) + noise());
    const options: ChangeOptions = { penalty: 4 * Math.log(3000), scale: 1 };
    expect(changePoints(values, options).length).toBeGreaterThan(4);
    const [row, ...others] = changePoints(values, { ...options, drift: 0.02 });
    expect(others).toEqual([]);
    expect(Math.abs((row as number) - 1500)).toBeLessThanOrEqual(2);
  });
  it('a burst shorter than 2 penalty / bound^2 rows is no level of its own', () => {
    const burst = (rows: number) => Array.from({ length: 60 }, (_, i) => (i >= 20 && i < 20 + rows ? 100 : 0));
    const options: ChangeOptions = { penalty: 20, scale: 1, bound: 2 }; // 2 * 20 / 4 = 10
    expect(changePoints(burst(9), options)).toEqual([]);
    expect(changePoints(burst(11), options)).toEqual([20, 31]);
  });
  it('a weight counts a reading so many times; 0 leaves it out', () => {
    const values = [0, 0, 9, 0, 0];
    expect(changePoints(values, { penalty: 5, scale: 1, cost: 'l2' })).toEqual([2, 3]);
    expect(changePoints(values, { penalty: 5, scale: 1, cost: 'l2', weights: [1, 1, 0, 1, 1] })).toEqual([]);
    expect(changePoints([0, 1], { penalty: 5, scale: 1, cost: 'l2', weights: [1, 1] })).toEqual([]);
    expect(changePoints([0, 1], { penalty: 5, scale: 1, cost: 'l2', weights: [20, 20] })).toEqual([1]);
  });
  it('nothing to read has no jumps', () => {
    expect(changePoints([], { penalty: 1, scale: 1 })).toEqual([]);
    expect(changePoints([Number.NaN, Infinity], { penalty: 1, scale: 1 })).toEqual([]);
  });
  it('says what must change', () => {
    expect(() => changePoints([1], { penalty: 1, scale: 0 })).toThrow('scale 0 must be above 0');
    expect(() => changePoints([1], { penalty: -1, scale: 1 })).toThrow('penalty -1 must be 0 or more');
    expect(() => changePoints([1], { penalty: 1, scale: 1, bound: 0 })).toThrow('bound 0 must be above 0');
    expect(() => changePoints([1], { penalty: 1, scale: 1, drift: -1 })).toThrow('drift -1 must be 0 or more');
  });
});
