import { describe, expect, it } from 'vitest';
import { parseSite } from '../site/index.js';
import { parsePanelList } from './parsePanelList.js';

const site = (more: object = {}) =>
  parseSite({
    format: 'beamkeep-site/1',
    timeZone: 'Europe/Lisbon',
    beams: ['B1', 'B2'].map((id) => ({ id, layout: 'reflective', separation: 62, signalColumn: id })),
    ...more,
  });
const read = (text: string, more?: object) => parsePanelList(text, 'events.csv', site(more));
const times = (text: string) => read(text).entries.map(({ time }) => new Date(time).toISOString().slice(0, 16));

describe('parsePanelList', () => {
  it('reads time, beam and what, in order of time', () =>
    expect(read('time,beam,what\n2027-03-16T07:29:30Z,B2,reset\n2027-03-16T06:42:30Z,B2,fire\n')).toEqual({
      entries: [
        { time: Date.parse('2027-03-16T06:42:30Z'), beam: 'B2', what: 'fire' },
        { time: Date.parse('2027-03-16T07:29:30Z'), beam: 'B2', what: 'reset' },
      ],
      notes: [],
    }));
  it.each(['\t', ';', ','])('knows the separator %j, any order of columns, quotes and a byte-order mark', (mark) => {
    const lines = [
      ['What', 'zone', 'Time', 'BEAM'],
      ['"own words"', '4', '16.03.2027 06:42', 'b1'],
    ];
    const text = `\ufeff${lines.map((cells) => cells.join(mark)).join('\r\n')}\r\n`;
    expect(read(text).entries).toEqual([{ time: Date.parse('2027-03-16T06:42Z'), beam: 'B1', what: 'own words' }]);
  });
  it('takes an empty beam for all beams, and so does a list without that column', () => {
    expect(read('time,beam,what\n2027-03-16T06:42:30Z,,reset\n').entries).toEqual([
      { time: Date.parse('2027-03-16T06:42:30Z'), what: 'reset' },
    ]);
    expect(read('time,what\n2027-03-16T06:42:30Z,reset\n').entries[0]).not.toHaveProperty('beam');
  });
  it("reads times without an offset on the site's clocks", () =>
    expect(times('time,what\n2027-07-01 06:40,fire\n1/12/2027 06:40,fire\n')).toEqual(['2027-07-01T05:40']));
  it('tells the two times of a doubled hour apart by the order of the list, the newest first too', () => {
    const lines = ['00:50', '01:30', '01:40', '01:10', '02:05'].map((clock) => `2027-10-31 ${clock},fire`);
    const instants = [
      '2027-10-30T23:50',
      '2027-10-31T00:30',
      '2027-10-31T00:40',
      '2027-10-31T01:10',
      '2027-10-31T02:05',
    ];
    expect(times(`time,what\n${lines.join('\n')}\n`)).toEqual(instants);
    expect(times(`time,what\n${lines.reverse().join('\n')}\n`)).toEqual(instants);
  });
  it('tells where nothing decides a doubled hour, and where an hour was skipped', () => {
    const { entries, notes } = read(
      'time,what\n2027-03-28 01:30,fault\n2027-10-31 01:30,fire\n2027-10-31 04:30,fire\n',
    );
    expect(new Date(entries[1]?.time ?? 0).toISOString()).toBe('2027-10-31T00:30:00.000Z');
    expect(notes).toEqual([
      {
        file: 'events.csv',
        line: 2,
        lines: 1,
        what: '2027-03-28 01:00 to 02:00 (Europe/Lisbon) is skipped by the clocks: read as if they had not yet gone forward',
      },
      {
        file: 'events.csv',
        line: 3,
        lines: 1,
        what: '2027-10-31 01:00 to 02:00 (Europe/Lisbon) is shown twice by the clocks and nothing tells its two times apart: read as the first',
      },
    ]);
  });
  it('leaves out other devices and broken lines, and tells them by line', () => {
    const text = 'time,beam,what\n2027-03-16T06:42:30Z,B1,fire\nyesterday,B1,fire\n2027-03-16T06:43Z,Pump 4,fault\nx\n';
    const { entries, notes } = read(text);
    expect(entries).toHaveLength(1);
    expect(notes.map(({ line, what }) => [line, what])).toEqual([
      [3, 'not a time, left out: "yesterday"'],
      [4, 'no beam of the site, left out: "Pump 4"'],
      [5, '1 cell where the header has 3'],
    ]);
  });
  it("lets the site's timeFormat decide between day and month where the list does not", () => {
    const text = 'time,what\n03/04/2027 06:40,fire\n';
    expect(() => read(text)).toThrow(
      'events.csv:2: "03/04/2027 06:40" can be day first or month first: set "timeFormat"',
    );
    expect(read(text, { timeFormat: 'day-first' }).entries[0]?.time).toBe(Date.parse('2027-04-03T05:40Z'));
    expect(read(text, { timeFormat: 'month-first' }).entries[0]?.time).toBe(Date.parse('2027-03-04T06:40Z'));
  });
  it.each([
    ['', 'events.csv: the file is empty'],
    ['time,beam\n2027-01-01T00:00Z,B1\n', 'events.csv:1: no column "what" ("time", "beam"): a panel\'s list has'],
    ['when,what\n2027-01-01T00:00Z,fire\n', 'events.csv:1: no column "time"'],
    ['time,beam,what\n', 'events.csv: the list ends after its header: there is no event'],
    ['time,beam,what\nsoon,B1,fire\n', 'events.csv:2: "soon" is not a time in a known format: write it as in a log'],
    [
      'time,beam,what\n2027-01-01T00:00Z,B9,fire\n',
      'events.csv:2: no beam of the site, left out: "B9"; no line of the list can be used',
    ],
  ])('%j is refused: %s', (text, says) => expect(() => read(text)).toThrow(says));
});
