import { strToU8 } from 'fflate';
import { expect, it } from 'vitest';
import { firstTime } from './firstTime.js';
import { logHead } from './head.js';
import { clockCell, skipped, timeCell } from './linePlan.js';

const plan = { separator: 44, decimalComma: false, format: 'iso', absent: [] } as const;

it('earliest time of the first lines, in the zone of their clocks', () => {
  const head = logHead('a.csv', strToU8('time,b1\n2027-07-04T02:00,1\nx,1\n2027-07-04T01:00,1\n'), true, 9);
  const actions = Int32Array.of(timeCell, 0);
  expect(firstTime(head, { ...plan, actions }, 'Europe/Lisbon')).toBe(Date.UTC(2027, 6, 4));
});
it('a time in two cells', () => {
  const head = logHead('a.csv', strToU8('b1,date,clock\n1,2027-07-04,02:00\n'), true, 9);
  const actions = Int32Array.of(skipped, timeCell, clockCell);
  expect(firstTime(head, { ...plan, actions }, 'UTC')).toBe(Date.UTC(2027, 6, 4, 2));
});
it('where none can be read, the file comes first', () => {
  const head = logHead('a.csv', strToU8('time,b1\nx,1\n'), true, 9);
  expect(firstTime(head, { ...plan, actions: Int32Array.of(timeCell, 0) }, 'UTC')).toBe(Number.NEGATIVE_INFINITY);
});
