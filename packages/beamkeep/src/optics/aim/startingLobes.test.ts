import { describe, expect, it } from 'vitest';
import { lobeLevel } from './lobeModel.js';
import { startingLobes } from './startingLobes.js';

/* A lobe of 100 over 5, half-angle 1.1 about 0.5, from -2 to 4 in steps of a half: 1 off the peak it stands above half. */

const column = Float64Array.from({ length: 13 }, (_, k) => -2 + 0.5 * k);
const level = lobeLevel({ peak: 100, floor: 5, centre: [0.5], halfAngle: [1.1], power: 2 }, [column]);
const least = 5 + 100 * 2 ** -((3.5 / 1.1) ** 2);

describe('startingLobes', () => {
  const [within, narrow, wide, beyond] = startingLobes([column], level);
  it('begin about the highest level, as wide as the level stands above half', () =>
    expect(within).toMatchObject({
      peak: expect.closeTo(105 - least, 9),
      floor: expect.closeTo(least, 9),
      centre: [0.5],
      halfAngle: [1],
      power: 2,
    }));
  it('and half as wide, and as wide as half of the scan', () => {
    expect(narrow).toMatchObject({ centre: [0.5], halfAngle: [0.5] });
    expect(wide).toMatchObject({ centre: [0.5], halfAngle: [3] });
  });
  it('and beyond the end that the highest level stands nearer to, half of the scan further and half as high again', () => {
    expect(beyond).toMatchObject({ centre: [0.5 - 3], halfAngle: [3], peak: expect.closeTo(1.5 * (105 - least), 9) });
    const mirrored = startingLobes([column.map((angle) => -angle)], level)[3];
    expect(mirrored?.centre[0]).toBe(-0.5 + 3);
  });
  it('one spike is no peak: a row counts with its two nearest', () => {
    const spiked = level.map((value, row) => (row === 12 ? 500 : value));
    expect(startingLobes([column], spiked)[0]?.centre).toEqual([0.5]);
  });
  it('readings may come in any order', () => {
    const order = [5, 0, 12, 3, 8, 1, 9, 2, 11, 4, 7, 10, 6];
    const [first] = startingLobes(
      [Float64Array.from(order, (row) => column[row] as number)],
      Float64Array.from(order, (row) => level[row] as number),
    );
    expect(first).toMatchObject({ centre: [0.5], halfAngle: [1] });
  });
  it('a level that is the same everywhere begins with a quarter of the scan, and a peak that is not nothing', () => {
    const [flat] = startingLobes([column], new Float64Array(13).fill(7));
    expect(flat?.peak).toBeGreaterThan(0);
    expect(flat?.halfAngle[0]).toBeGreaterThan(0);
  });
  it('a peak of one reading between low ones is a quarter of the scan wide', () => {
    const sharp = level.map((_, row) => (row === 5 ? 100 : row === 4 || row === 6 ? 40 : 0));
    expect(startingLobes([column], sharp)[0]).toMatchObject({ centre: [0.5], halfAngle: [1.5] });
  });
  it('over two axes nearness is a share of each one\u2019s range', () => {
    // A raster ten times as wide as high: the neighbours of a place lie along the wide axis too.
    const places = [-2, -1, 0, 1, 2];
    const first = Float64Array.from(places.flatMap((x) => places.map(() => 10 * x)));
    const second = Float64Array.from(places.flatMap(() => places));
    const lobe = { peak: 100, floor: 0, centre: [10, 1], halfAngle: [10, 1], power: 2 };
    const [start, , , outward] = startingLobes([first, second], lobeLevel(lobe, [first, second]));
    expect(start).toMatchObject({ centre: [10, 1], halfAngle: [10, 1] });
    expect(outward).toMatchObject({ centre: [30, 3], halfAngle: [20, 2] });
  });
  it('an axis that was not moved has a width of one', () =>
    expect(startingLobes([column, column.map(() => 0)], level)[0]?.halfAngle).toEqual([1, 1]));
});
