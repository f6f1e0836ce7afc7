import { describe, expect, it } from 'vitest';
import { day, hour } from '../../columns/index.js';
import { labelSpells, spells } from './spells.js';

const nights = (...days: number[]) => days.map((at) => ({ from: at * day, to: at * day + 4 * hour, size: 0.01 * at }));

describe('spells', () => {
  it('joins times no more than 7.5 days apart', () => {
    expect(spells(nights(1, 2, 9, 20, 21)).map((spell) => spell.length)).toEqual([3, 2]);
  });
});

describe('labelSpells', () => {
  it('labels a spell by its median and tells its episodes', () => {
    const { causes } = labelSpells('condensation', nights(1, 2, 9), 2, '%');
    expect(causes).toEqual([
      {
        cause: 'condensation',
        start: '1970-01-02T00:00:00.000Z',
        end: '1970-01-10T04:00:00.000Z',
        magnitude: 2,
        unit: '%',
        episodes: [
          ['1970-01-02T00:00:00.000Z', '1970-01-02T04:00:00.000Z'],
          ['1970-01-03T00:00:00.000Z', '1970-01-03T04:00:00.000Z'],
          ['1970-01-10T00:00:00.000Z', '1970-01-10T04:00:00.000Z'],
        ],
      },
    ]);
  });

  it('asks for nothing that came once', () => {
    const { causes, traces } = labelSpells('condensation', nights(3), 2, '%');
    expect(causes).toEqual([]);
    expect(traces[0]).toMatchObject({ why: 'came too rarely', near: true });
  });
});
