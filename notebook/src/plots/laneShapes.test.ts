import { hour } from 'beamkeep/columns';
import { describe, expect, it } from 'vitest';
import type { NumberedFinding } from '../bench/reading.js';
import { siteZone } from '../bench/siteZone.js';
import type { Lane } from './lane.js';
import { shading } from './laneShapes.js';
import type { Palette } from './palette.js';
import type { Strip } from './strips.js';

const start = Date.UTC(2027, 0, 4);
const window = { from: start, to: start + 100 * hour };
const colours = { band: 'band', warm: 'warm' } as Palette;
const finding = (number: number, from: number, to: number, episodes?: NumberedFinding['episodes']): Strip =>
  ({
    finding: { number, start: start + from * hour, end: start + to * hour, ...(episodes ? { episodes } : {}) },
  }) as Strip;

/** From and to of each area, in hours of the window. */
const areas = (lane: Partial<Lane>) =>
  shading({ window, zone: siteZone('UTC'), chosen: null, ...lane } as Lane, colours).map(({ fillcolor, path }) => [
    fillcolor,
    [...(path ?? '').matchAll(/M([^,]+),0V1H([^V]+)V0Z/g)].map(([, from = '', to = '']) =>
      [from, to].map((at) => (Date.parse(`${at.replace('_', 'T')}Z`) - start) / hour),
    ),
  ]);

describe('shading', () => {
  it('short findings are one shape, the chosen one another, those that come and go or last stand unshaded', () => {
    const spells: [number, number][] = [[start + 60 * hour, start + 61 * hour]];
    const strips = [finding(1, 1, 3), finding(2, 5, 6), finding(3, 0, 50), finding(4, 60, 90, spells)];
    expect(areas({ strips, chosen: 2 })).toEqual([
      ['band', [[1, 3]]],
      ['warm', [[5, 6]]],
    ]);
    expect(areas({ strips })).toEqual([
      [
        'band',
        [
          [1, 3],
          [5, 6],
        ],
      ],
    ]);
    expect(areas({ strips, chosen: 4 })[1]).toEqual(['warm', [[60, 61]]]);
  });

  it('what lies outside the window is left out, what is too short to be seen is made longer', () => {
    const strips = [finding(1, -9, -8), finding(2, 7, 7.01)];
    expect(areas({ strips })).toEqual([['band', [[7, 7.2]]]]);
  });

  it('what two findings share is filled once, not left open', () => {
    const strips = [finding(1, 1, 6), finding(2, 4, 9)];
    const lane = { window, zone: siteZone('UTC'), chosen: null, strips } as Partial<Lane> as Lane;
    expect(shading(lane, colours)).toMatchObject([{ type: 'path', fillrule: 'nonzero' }]);
    expect(areas({ strips })[0]?.[1]).toEqual([
      [1, 6],
      [4, 9],
    ]);
  });

  it('nothing to shade is no shape', () => expect(areas({ strips: [] })).toEqual([]));
});
