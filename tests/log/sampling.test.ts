import { logOfText, readSamples, readTraces } from 'beamkeep/log';
import { describe, expect, it } from 'vitest';
import { rowsOf, siteOf } from './rowsOf.js';

const onChange = siteOf(['b1', 'b2'], { sampling: 'on-change' });
const log = logOfText(
  [
    'time,name,value',
    '2027-01-04T00:00:00Z,b1,100',
    '2027-01-04T00:00:10Z,b2,98',
    '2027-01-04T00:10:00Z,b1,40',
    '2027-01-04T00:10:20Z,b1,',
    '2027-01-04T00:20:00Z,b2,97',
    '2027-01-04T00:30:00Z,b1,99',
  ].join('\n'),
);

describe('a log of changes', () => {
  it('row by row, every column says what holds', async () => {
    const { columns } = await rowsOf(log, onChange);
    expect(columns).toEqual([
      [100, 100, 40, Number.NaN, Number.NaN, 99],
      [Number.NaN, 98, 98, 98, 97, 97],
    ]);
  });
  it('in a trace an hour weighs what held by how long it held', async () => {
    const { records } = await readTraces(log, onChange);
    const [b1, b2] = records;
    const time = [...(b1?.trace.time ?? [])].map((instant) => new Date(instant).toISOString().slice(11, 19));
    expect(time.slice(0, 3)).toEqual(['00:00:00', '00:00:09', '00:00:10']);
    expect(time.at(-1)).toBe('00:30:00');
    expect(b1?.trace.level.filter((level) => level === 1)).toHaveLength(13);
    expect([b1?.logged, b2?.logged]).toEqual([3, 2]);
  });
  it('a sudden change stays sudden', async () => {
    const { beams } = await readSamples(log, onChange);
    const { time, level } = beams[0]?.samples ?? { time: [], level: [] };
    const at = [...level].indexOf(0.4);
    expect((time[at] ?? 0) - (time[at - 1] ?? 0)).toBe(1000);
    expect(level[at - 1]).toBe(1);
  });
});

describe('a log of regular samples', () => {
  it('every sample as a share of clean air, and what was logged beside it', async () => {
    const site = siteOf(
      ['b1'],
      {},
      { signalUnit: 'counts', cleanAir: 2012, covered: 12, temperatureColumn: 't', plantColumn: 'fan' },
    );
    const text =
      'time,b1,t,fan\n2027-01-04T00:00:00Z,2012,8.5,0\n2027-01-04T00:01:00Z,,9.5,1\n2027-01-04T00:02:00Z,1012,,1\n';
    const { beams, input } = await readSamples(logOfText(text), site);
    expect(beams[0]?.samples.level).toEqual(Float64Array.of(1, 0.5));
    expect(beams[0]?.intervalSeconds).toBe(120);
    expect(beams[0]?.temperature?.value).toEqual(Float64Array.of(8.5, 9.5));
    expect(beams[0]?.plant?.value).toEqual(Float64Array.of(0, 1, 1));
    expect(beams[0]).not.toHaveProperty('gain');
    expect(input.lines).toBe(4);
  });
  it('a beam without a single value has an empty record, and that is told', async () => {
    const text = 'time,b1,b2\n2027-01-04T00:00:00Z,100,\n2027-01-04T00:01:00Z,99,NA\n';
    const { records, input } = await readTraces(logOfText(text), siteOf(['b1', 'b2']));
    expect(records[1]?.trace.time.length).toBe(0);
    expect(input.notes[0]).toEqual({ line: 1, lines: 1, what: 'every value is missing in column: "b2"' });
  });
  it('the clean-air reading of counts comes from the log where the site leaves it out, and is told', async () => {
    const lines = Array.from(
      { length: 2000 },
      (_, row) => `${new Date(Date.UTC(2027, 0, 4) + row * 60_000).toISOString()},2000`,
    );
    const { records } = await readTraces(
      logOfText(`time,b1\n${lines.join('\n')}\n`),
      siteOf(['b1'], {}, { signalUnit: 'counts' }),
    );
    expect(records[0]?.trace.level[0]).toBe(1);
    expect(records[0]?.assumed).toEqual(["cleanAir 2000 counts, from the log's first good stretch (2027-01-04)"]);
  });
});
