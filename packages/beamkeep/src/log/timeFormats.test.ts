import { strToU8 } from 'fflate';
import { expect, it } from 'vitest';
import { parseSite } from '../site/index.js';
import { logHead } from './head.js';
import { noteBook } from './inputNotes.js';
import { isUndecided, timeFormats } from './timeFormats.js';

const head = (text: string, file = 'a.csv') => logHead(file, strToU8(text), true, 50);
const site = (more: object = {}) =>
  parseSite({ format: 'beamkeep-site/1', beams: [{ id: 'B1', layout: 'reflective', separation: 50 }], ...more });

it('what is worked out is told once, and again where a file differs', () => {
  const notes = noteBook();
  const iso = 'time,b1\n2027-01-04T00:00:00Z,1\n';
  const heads = [head(iso), head(iso, 'b.csv'), head('time,b1\n1799020800,1\n', 'c.csv')];
  expect(timeFormats(heads, site(), notes)).toEqual(['iso', 'iso', 'unix-seconds']);
  expect(notes.list(3).map(({ file }) => file)).toEqual(['a.csv', 'c.csv']);
});

it('day or month: undecided until a line decides, never where the site says it', () => {
  const both = head('time,b1\n03/04/2027,1\n');
  expect([isUndecided(both, site()), isUndecided(both, site({ timeFormat: 'day-first' }))]).toEqual([true, false]);
  expect(isUndecided(head('time,b1\n03/04/2027,1\n13/04/2027,1\n'), site())).toBe(false);
});
