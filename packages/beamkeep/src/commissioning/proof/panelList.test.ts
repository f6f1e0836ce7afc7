import { describe, expect, it } from 'vitest';
import { panelList } from './panelList.js';

const site = { timeZone: 'Europe/Lisbon', beams: [{ id: 'B1' }, { id: 'B2' }] } as unknown as Parameters<
  typeof panelList
>[1];
const table = (...lines: readonly string[]) => ({
  file: 'events.csv',
  names: ['time', 'beam', 'what'],
  rows: lines.map((line, row) => ({ line: row + 2, cells: line.split(',') })),
});

describe('panelList', () => {
  it('takes one beam, its clock put right, in order of time', () =>
    expect(
      panelList(
        table('2027-01-20T10:05:00Z,B1,Reset', '2027-01-20T10:02:20Z,B1,fire', '2027-01-20T10:03:00Z,B2,fire'),
        site,
        'B1',
        140,
      ),
    ).toEqual([
      { time: Date.parse('2027-01-20T10:00:00Z'), what: 'fire' },
      { time: Date.parse('2027-01-20T10:02:40Z'), what: 'reset' },
    ]));
  it('reads a time without an offset in the zone of the site', () =>
    expect(panelList(table('2027-07-20 11:00:00,B1,fire'), site, 'B1')[0]?.time).toBe(
      Date.parse('2027-07-20T10:00:00Z'),
    ));
  it.each([
    [table('soon,B1,fire'), 'events.csv:2: "soon" is no time'],
    [table('2027-01-20T10:05:00Z,B11,fire'), 'events.csv:2: "B11" is no beam of the site; the nearest is "B1"'],
    [{ ...table(), names: ['time', 'who', 'what'] }, 'no column "beam"'],
  ])('refuses %j', (list, says) => expect(() => panelList(list, site, 'B1')).toThrow(says));
});
