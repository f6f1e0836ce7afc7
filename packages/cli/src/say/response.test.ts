import { describe, expect, it } from 'vitest';
import type { Response, ToldChange } from '../answers.js';
import { ascii } from '../plot/cells.js';
import { palette } from './palette.js';
import { responseText } from './response.js';

const look = { width: 80, colours: palette(false), cells: ascii };
const site = { name: 'Depot', timeZone: 'Europe/Lisbon' };
const told = (changes: readonly ToldChange[], assumed: readonly string[] = []): string => {
  const answer: Response = { format: 'beamkeep-response/1', beams: [{ id: 'B1', changes, assumed }] };
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
    expect(text).toMatch(/Beam B1 {2}fire 1 time, fault 0 times/);
    expect(text).toMatch(/2027-07-02 09:00:10 +fire +30 min\n/);
    expect(text).toMatch(/2027-07-02 09:30:10 +normal +to the end of the log/);
    expect(text).toContain('Assumed: alarmDelay 10 s.');
    expect(text).toContain("the maker's instructions");
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
