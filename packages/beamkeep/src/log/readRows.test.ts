import { expect, it } from 'vitest';
import { parseSite } from '../site/index.js';
import { logOfText } from './logSource.js';
import { readRows } from './readRows.js';

it('tells a sink the columns, then the rows, then the end; beams may share a column', async () => {
  const beam = { layout: 'reflective', separation: 50 };
  const site = parseSite({
    format: 'beamkeep-site/1',
    beams: [
      { ...beam, id: 'B1', signalColumn: 'x', temperatureColumn: 't' },
      { ...beam, id: 'B2', signalColumn: 'x', temperatureColumn: 't' },
    ],
  });
  const told: unknown[] = [];
  await readRows(logOfText('time,t,x\n2027-01-04T00:00:00Z,8,100\n'), site, {
    header: ({ names, signal, of }) => told.push(names, signal, of('t'), of('none')),
    rows: ({ time, columns, count }) =>
      told.push(
        [...time],
        columns.map((column) => [...column]),
        count,
      ),
    end: () => told.push('end'),
  });
  expect(told).toEqual([['x', 't'], [0, 0], 1, undefined, [Date.UTC(2027, 0, 4)], [[100], [8]], 1, 'end']);
});

it('without a source there is no log', async () => {
  const site = parseSite({ format: 'beamkeep-site/1', beams: [{ id: 'B1', layout: 'reflective', separation: 5 }] });
  await expect(readRows([], site, { header() {}, rows() {}, end() {} })).rejects.toThrow(
    'no log: name at least one file',
  );
});
