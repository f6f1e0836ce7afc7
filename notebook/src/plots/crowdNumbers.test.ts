import { describe, expect, it } from 'vitest';
import { type Crowded, crowdNumbers } from './crowdNumbers.js';

/** Marks of bars in a row 300 px long, one pixel a millisecond: a mark takes up 6.6 px a letter and 6 px. */
const marks = (...bars: readonly (readonly [number: number, start: number, end: number])[]) =>
  crowdNumbers(
    bars.map(([number, start, end]): Crowded => ({ number, start, end })),
    { from: 0, to: 300 },
    1,
  ).map(({ name, at, ends = false, within }) => [name, at, ends, within !== null]);

describe('crowdNumbers', () => {
  it('each bar has its number after it, or in it where it is long enough', () =>
    expect(marks([7, 10, 15], [8, 50, 80])).toEqual([
      ['7', 15, false, false],
      ['8', 50, false, true],
    ]));
  it('bars too near to each other have one mark together: two by both numbers, more by the first and the last', () => {
    expect(marks([7, 10, 15], [8, 20, 25], [11, 150, 155])).toEqual([
      ['7, 8', 25, false, false],
      ['11', 155, false, false],
    ]);
    expect(marks([7, 10, 15], [8, 20, 25], [9, 30, 40])).toEqual([['7…9', 40, false, false]]);
  });
  it('a long bar with another on it has its mark after both', () =>
    expect(marks([7, 10, 90], [8, 20, 25])).toEqual([['7, 8', 90, false, false]]));
  it('at the edge it stands before its bars, or over them where there is no room either', () => {
    expect(marks([7, 290, 295])).toEqual([['7', 290, true, false]]);
    expect(marks([7, 0, 5], [8, 3, 299], [9, 5, 6])).toEqual([['7…9', 300, true, false]]);
    expect(marks([6, 265, 270], [7, 290, 295])).toEqual([
      ['6', 270, false, false],
      ['7', 300, true, false],
    ]);
  });
  it('no bars, no marks', () => expect(marks()).toEqual([]));
});
