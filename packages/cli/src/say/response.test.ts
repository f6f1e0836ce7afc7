import { type ChangeJson, parseSite, type ResponseJson } from 'beamkeep';
import { describe, expect, it } from 'vitest';
import { ascii } from '../plot/cells.js';
import { palette } from './palette.js';
import { responseText } from './response.js';

const look = { width: 80, colours: palette(false), cells: ascii };
const site = parseSite({
  format: 'beamkeep-site/1',
  name: 'Depot',
  timeZone: 'Europe/Lisbon',
  beams: [{ id: 'B1', layout: 'reflective', separation: 62, signalColumn: 'b1' }],
});
const told = (changes: readonly ChangeJson[], assumed: readonly string[] = []): string => {
  const answer: ResponseJson = {
    format: 'beamkeep-response/1',
    beams: [{ id: 'B1', changes, assumed, notes: ['once the loss became total between two samples'] }],
    input: { lines: 9, dropped: 0, notes: [] },
  };
  return responseText(answer, site, look);
};

describe('responseText', () => {
  it('gives each change in the zone of the site and how long it held', () => {
    const text = told(
      [
        { time: '2027-07-01T00:00:00.000Z', state: 'normal' },
        { time: '2027-07-02T08:00:10.000Z', state: 'fire' },
        { time: '2027-07-02T08:30:10.000Z', state: 'normal' },
      ],
      ['alarmDelay 10 s'],
    );
    expect(text).toMatch(/Beam B1 {2}fire: 1 time, fault: 0 times/);
    expect(text).toMatch(/2027-07-02 09:00:10 +fire +30 min\n/);
    expect(text).toMatch(/2027-07-02 09:30:10 +normal +to the end of the log/);
    expect(text).toContain('Assumed: alarmDelay 10 s.');
    expect(text).toContain('Note: once the loss became total between two samples.');
    expect(text).toContain('Input: 9 lines, none dropped.');
    expect(text).toContain("the maker's instructions");
  });
  it('says how long a latched fire is held', () => {
    const fire = { time: '2027-07-02T08:00:10.000Z', state: 'fire' } as const;
    expect(told([fire])).toContain('held until a visit whose work is "reset"');
  });
  it('counts changes beyond sixty', () => {
    const many = Array.from({ length: 75 }, (_, at) => ({
      time: new Date(Date.parse('2027-01-01T00:00:00Z') + at * 60_000).toISOString(),
      state: at % 2 === 0 ? ('normal' as const) : ('fault' as const),
    }));
    expect(told(many)).toContain('and 15 more changes: --json lists all');
  });
  it('tells a beam without samples', () => expect(told([])).toContain('no usable samples'));
});
