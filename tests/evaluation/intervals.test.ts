import { describe, expect, it } from 'vitest';
import { intersectionOverUnion, pairs, union } from './intervals.js';

describe('union', () => {
  it('joins what overlaps or touches, whatever the order', () => {
    expect(
      union([
        { from: 8, to: 9 },
        { from: 0, to: 2 },
        { from: 1, to: 3 },
        { from: 3, to: 4 },
      ]),
    ).toEqual([
      { from: 0, to: 4 },
      { from: 8, to: 9 },
    ]);
  });
  it('keeps a stretch that lies inside another', () =>
    expect(
      union([
        { from: 0, to: 9 },
        { from: 1, to: 2 },
      ]),
    ).toEqual([{ from: 0, to: 9 }]));
});

describe('intersectionOverUnion', () => {
  it('is 1 for the same time cut in other pieces', () =>
    expect(
      intersectionOverUnion(
        [{ from: 0, to: 4 }],
        [
          { from: 0, to: 1 },
          { from: 1, to: 4 },
        ],
      ),
    ).toBe(1));
  it('is a third for two stretches that share half', () =>
    expect(intersectionOverUnion([{ from: 0, to: 2 }], [{ from: 1, to: 3 }])).toBeCloseTo(1 / 3, 12));
  it('is 0 apart', () => expect(intersectionOverUnion([{ from: 0, to: 1 }], [{ from: 2, to: 3 }])).toBe(0));
});

describe('pairs', () => {
  const near = (a: number, b: number): boolean => Math.abs(a - b) <= 1;
  it('gives way so that both find a partner', () => expect(pairs([1, 0], [1, 2], near)).toEqual([1, 0]));
  it('uses none twice', () => expect(pairs([0, 0], [0], near)).toEqual([0, undefined]));
});
