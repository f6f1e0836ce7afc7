import { expect, it } from 'vitest';
import { parseSite } from '../site/index.js';
import { logOfText } from './logSource.js';
import { readTraces } from './readTraces.js';

it('a record a beam, and what was mended', async () => {
  const site = parseSite({
    format: 'beamkeep-site/1',
    beams: [{ id: 'North', layout: 'reflective', separation: 62, signalColumn: 'b1', covered: 0.4, cleanAir: 100 }],
  });
  const text = 'time,b1\n2027-01-04T00:00:00Z,100\n2027-01-04T00:02:00Z,50.2\n2027-01-04T00:01:00Z,0.4\n';
  const { records, input } = await readTraces(logOfText(text), site);
  expect(records.map(({ id }) => id)).toEqual(['North']);
  const { level } = records[0]?.trace ?? { level: [] };
  expect([...level].map((share) => share.toFixed(12))).toEqual(['1.000000000000', '0.000000000000', '0.500000000000']);
  expect(input).toEqual({
    lines: 4,
    dropped: 0,
    notes: [
      { line: 2, lines: 1, what: 'times were taken for ISO 8601' },
      { line: 3, lines: 1, what: 'out of order: put in its place' },
    ],
  });
});

it.each([
  ['decibels', [0, -0.05, 0.05, 0.1], 10 ** 0.005 - 1],
  ['obscuration', [0, -0.5, 0.5, 1], 0.005],
] as const)('the step of a coarse scale in %s, of few readings about 0', async (signalUnit, readings, step) => {
  const beam = { id: 'North', layout: 'reflective', separation: 62, signalColumn: 'b1', signalUnit };
  const site = parseSite({ format: 'beamkeep-site/1', beams: [beam] });
  const rows = Array.from({ length: 400 }, (_, k) => {
    const time = new Date(Date.UTC(2027, 0, 4, 0, k)).toISOString();
    return `${time},${readings[k % 7 === 0 ? k % 4 : 0]}\n`;
  });
  const { records } = await readTraces(logOfText(`time,b1\n${rows.join('')}`), site);
  expect(records[0]?.quantum).toBeCloseTo(step, 3);
});
