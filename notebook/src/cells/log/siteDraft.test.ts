import { parseSite } from 'beamkeep';
import { describe, expect, it } from 'vitest';
import { guessed, siteOf } from './siteDraft.js';

const peeked = {
  columns: ['time', 'b1', 'b2', 't_roof', 'remark'],
  rows: [
    ['2027-01-04T00:00:00Z', '99.5', '2131', '7.5', 'dry'],
    ['2027-01-04T00:01:00Z', '99.4', '2129', '7.5', ''],
  ],
};

describe('guessed', () => {
  it('tells time, beams, temperature and the rest apart', () => {
    const draft = guessed(peeked, 'UTC');
    expect(draft.roles).toEqual(['time', 'beam', 'beam', 'temperature', 'nothing']);
    expect(draft.beams.map(({ unit }) => unit).slice(1, 3)).toEqual(['percent', 'counts']);
  });

  it('reads decibels by their sign, and decimal commas', () => {
    const rows = [
      ['1', '-0,5'],
      ['2', '0'],
    ];
    expect(guessed({ columns: ['t', 'b'], rows }, 'UTC').beams[1]?.unit).toBe('decibels');
  });
});

describe('siteOf', () => {
  it('is a site file that can be read', () => {
    const draft = guessed(peeked, 'Europe/Lisbon');
    const filled = { ...draft, name: 'Hall', beams: draft.beams.map((beam) => ({ ...beam, separation: '62,5' })) };
    const site = parseSite(siteOf(filled, peeked.columns));
    expect(site).toMatchObject({ name: 'Hall', timeZone: 'Europe/Lisbon', timeColumn: 'time' });
    expect(site.beams.map(({ id, separation, temperatureColumn }) => [id, separation, temperatureColumn])).toEqual([
      ['b1', 62.5, 't_roof'],
      ['b2', 62.5, 't_roof'],
    ]);
  });

  it('a separation that is not given is refused by the reader, not guessed', () => {
    expect(() => parseSite(siteOf(guessed(peeked, 'UTC'), peeked.columns))).toThrow(/separation/);
  });
});
