import { describe, expect, it } from 'vitest';
import { parseSite } from '../site/index.js';
import { logOfText } from './logSource.js';
import { readTraces } from './readTraces.js';

describe('a broken date', () => {
  it.each(['2027-10-32T10:05:00Z,9', '2027-10-20227T10,', '2027-11-05E;'])(
    'lends its day to no good line: %s',
    async (broken) => {
      const site = parseSite({
        format: 'beamkeep-site/1',
        beams: [{ id: 'B1', layout: 'reflective', separation: 50 }],
      });
      const text = `time,b1\n2027-10-30T10:00:00Z,99\n${broken}\n2027-10-30T10:10:00Z,98\n2027-10-30T10:15:00Z,97\n`;
      const { records } = await readTraces(logOfText(text), site);
      const told = [...(records[0]?.trace.time ?? [])].filter((t) => t !== Date.UTC(2027, 10, 5));
      expect(told.map((t) => new Date(t).toISOString().slice(0, 16))).toEqual([
        '2027-10-30T10:00',
        '2027-10-30T10:10',
        '2027-10-30T10:15',
      ]);
    },
  );
  it.each(['day-first', 'month-first'] as const)('nor where the %s order is used', async (timeFormat) => {
    const site = parseSite({
      format: 'beamkeep-site/1',
      timeFormat,
      beams: [{ id: 'B1', layout: 'reflective', separation: 50 }],
    });
    const text = 'time;b1\n11/11/2027 10:00:00;99\n11/11/2011/0E;\n11/11/2027 10:10:00;98\n11/11/2027 10:15:00;97\n';
    const { records } = await readTraces(logOfText(text), site);
    const told = [...(records[0]?.trace.time ?? [])].map((t) => new Date(t).toISOString().slice(0, 16));
    expect(told.slice(-3)).toEqual(['2027-11-11T10:00', '2027-11-11T10:10', '2027-11-11T10:15']);
  });
});
