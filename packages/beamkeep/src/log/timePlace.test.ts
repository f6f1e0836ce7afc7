import { strToU8 } from 'fflate';
import { expect, it } from 'vitest';
import { parseSite } from '../site/index.js';
import { logHead } from './head.js';
import { timePlace } from './timePlace.js';

const head = logHead('a.csv', strToU8('b1,day,hour\n1,2,3\n'), true, 5);
const site = (timeColumn?: unknown) =>
  parseSite({
    format: 'beamkeep-site/1',
    beams: [{ id: 'B1', layout: 'reflective', separation: 50 }],
    ...(timeColumn === undefined ? {} : { timeColumn }),
  });

it('the first column, or those that the site names', () => {
  expect(timePlace(head, site())).toEqual({ time: 0, clock: -1 });
  expect(timePlace(head, site('day'))).toEqual({ time: 1, clock: -1 });
  expect(timePlace(head, site(['day', 'hour']))).toEqual({ time: 1, clock: 2 });
  expect(() => timePlace(head, site('hours'))).toThrow('a.csv:1: timeColumn: no column "hours": is it "hour"?');
});
