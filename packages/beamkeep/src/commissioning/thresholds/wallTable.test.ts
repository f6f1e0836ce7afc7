import { describe, expect, it } from 'vitest';
import { usualSeparations, usualThresholds, wallTable } from './wallTable.js';

const beam = { layout: 'reflective', wavelength: 880 } as const;

describe('wallTable', () => {
  it('has a row a separation from 20 to 100 m and a cell a threshold', () => {
    const { rows } = wallTable(beam, usualThresholds(35));
    expect(rows.map(({ separation }) => separation)).toEqual(usualSeparations);
    expect(rows.every(({ cells }) => cells.length === 3)).toBe(true);
  });
  it('law: twice the separation is half the smoke a metre', () => {
    const [near, far] = wallTable(beam, [35], [40, 80]).rows;
    expect(near?.cells[0]?.units['decibels-per-metre']).toBeCloseTo(
      2 * (far?.cells[0]?.units['decibels-per-metre'] as number),
      12,
    );
  });
  it('puts the own threshold among the usual ones, once', () => {
    expect(usualThresholds(35)).toEqual([25, 35, 50]);
    expect(usualThresholds(30)).toEqual([25, 30, 35, 50]);
  });
  it('refuses an empty table', () => expect(() => wallTable(beam, [])).toThrow('at least one threshold'));
  it('refuses a table without separations', () =>
    expect(() => wallTable(beam, [35], [])).toThrow('at least one threshold and one separation'));
  it('says each threshold in its column, over the path of its row', () => {
    const { thresholds, rows } = wallTable(beam, [25, 50], [20, 40]);
    expect(thresholds).toEqual([25, 50]);
    expect(rows.map(({ cells }) => cells.map(({ percent, pathMetres }) => [percent, pathMetres]))).toEqual([
      [
        [25, 40],
        [50, 40],
      ],
      [
        [25, 80],
        [50, 80],
      ],
    ]);
  });
  it('usual thresholds stand in order', () => expect(usualThresholds(9)).toEqual([9, 25, 35, 50]));
});
