import type { ClockJson, EventJson } from 'beamkeep';
import { describe, expect, it } from 'vitest';
import { ascii } from '../plot/cells.js';
import { eventsText } from './events.js';
import { palette } from './palette.js';
import { clock } from './times.js';

const panel: ClockJson = {
  offsetSeconds: 140,
  source: 'estimated',
  matched: 2,
  of: 2,
  spreadSeconds: 0,
  estimateSeconds: 140,
  words: "The panel's clock runs 140 s ahead of the log's.",
};
const event = (more: Partial<EventJson> = {}): EventJson => ({
  time: '2027-03-16T06:42:30.000Z',
  beam: 'B3',
  what: 'fire',
  at: '2027-03-16T06:40:10.000Z',
  clockOffsetSeconds: 140,
  state: 'fire',
  obscuration: 35.94,
  finding: { beam: 'B3', cause: 'smoke-like', start: '2027-03-16T06:30:00.000Z' },
  words: 'The log agrees.',
  ...more,
});
const text = (events: readonly EventJson[]) =>
  eventsText(panel, events, clock('Europe/Lisbon'), { width: 80, colours: palette(false), cells: ascii });

describe('eventsText', () => {
  it("puts the panel's word beside the log's, on the clocks of the site", () => {
    const lines = text([event(), event({ beam: null, state: null, obscuration: null, finding: null })]).split('\n');
    expect(lines.slice(0, 2)).toEqual(["The panel's list  2 events", `  ${panel.words}`]);
    expect(lines.slice(3, 6).map((line) => line.trim().split(/ {2,}/))).toEqual([
      ["at, by the log's clock", 'beam', 'panel', 'settings give', 'obscuration', 'found'],
      ['2027-03-16 06:40:10', 'B3', 'fire', 'fire', '35.9 %', 'smoke-like'],
      ['2027-03-16 06:40:10', 'all', 'fire', 'no sample', 'nothing near'],
    ]);
  });
  it('tells what is alike once', () => {
    const days = ['13', '14', '15'].map((day) => event({ at: `2027-03-${day}T07:54:10.000Z` }));
    const told = text([...days, event({ what: 'fault', words: 'The log shows no blocked beam then.' })]);
    expect(told).toContain('  B3, fire, 3 times, 2027-03-13 to 2027-03-15; the first: The log agrees.');
    expect(told).toContain('  B3, fault, on 2027-03-16 06:40:10: The log shows no blocked beam then.');
  });
  it('counts what does not fit', () =>
    expect(text(Array.from({ length: 72 }, () => event()))).toContain('and 12 more: --json lists all'));
});
