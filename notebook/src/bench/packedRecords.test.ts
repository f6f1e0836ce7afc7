import { UsageError } from 'beamkeep';
import type { BeamRecord } from 'beamkeep/columns';
import { parseSite, type Site } from 'beamkeep/site';
import { describe, expect, it } from 'vitest';
import { isPackedLog, packedLog, unpackedLog } from './packedRecords.js';
import { testTrace } from './testTrace.js';

const siteWith = (beam: object): Site =>
  parseSite({
    format: 'beamkeep-site/1',
    timeZone: 'Europe/Lisbon',
    beams: ['a', 'b'].map((id) => ({
      id,
      layout: 'reflective',
      separation: 40,
      signalColumn: id,
      cleanAir: 100,
      ...beam,
    })),
  });
const site = siteWith({});
const begin = Date.parse('2027-03-01T06:00:00.250Z');
const roof = { time: Float64Array.of(begin, begin + 60_000), value: Float64Array.of(4.5, -0.1) };
/** A quiet minute, then samples. */
const condensed: BeamRecord = {
  id: 'a',
  trace: {
    time: Float64Array.of(begin, begin + 60_000, begin + 61_000.125),
    until: Float64Array.of(begin + 59_000, begin + 60_000, begin + 61_000.125),
    level: Float64Array.of(0.9731, 0.1 + 0.2, 1.2),
    low: Float32Array.of(0.96, 0.3, 1.2),
    high: Float32Array.of(0.98, 0.3, 1.2),
    spread: Float32Array.of(0.0012, 0, 0),
    count: Uint32Array.of(60, 1, 1),
  },
  intervalSeconds: 1,
  quantum: 0.001,
  cleanAir: 99.5,
  logged: 62,
  temperature: roof,
  assumed: ['covered 0 %'],
};
const empty: BeamRecord = {
  id: 'b',
  trace: testTrace([], []),
  intervalSeconds: Number.NaN,
  quantum: 0,
  temperature: roof,
  assumed: [],
};
const log = {
  records: [condensed, empty],
  input: { lines: 70, dropped: 1, notes: [{ line: 7, lines: 1, what: 'not a number: "<b>"', file: 'a.csv' }] },
};
const bytesOf = async (blob: Blob): Promise<Uint8Array<ArrayBuffer>> => new Uint8Array(await blob.arrayBuffer());

describe('a reduced log', () => {
  it('comes out as it went in, bit for bit, and is known by its first line', async () => {
    const packed = await packedLog(log, site);
    await expect(isPackedLog(packed)).resolves.toBe(true);
    await expect(unpackedLog('x', packed, site)).resolves.toEqual(log);
    await expect(isPackedLog(new Blob(['time,a\n']))).resolves.toBe(false);
  });

  it('holds a channel that two beams read once', async () => {
    const { records } = await unpackedLog('x', await packedLog(log, site), site);
    expect(records[0]?.temperature).toBe(records[1]?.temperature);
  });

  it('is the same file from the same log', async () => {
    expect(await bytesOf(await packedLog(log, site))).toEqual(await bytesOf(await packedLog(log, site)));
  });

  it('is refused when one bit anywhere is another, or it is cut off, and says so in one line', async () => {
    const whole = await bytesOf(await packedLog(log, site));
    const first = 'beamkeep-records/1\n'.length + 10;
    for (let at = first; at < whole.length; at += 7) {
      const spoilt = whole.slice();
      spoilt[at] = (spoilt[at] as number) ^ 4;
      await expect(unpackedLog('north.reduced', new Blob([spoilt]), site)).rejects.toThrow(
        /^north\.reduced: this reduced log is damaged .*settings and notes are as they were.*$/,
      );
    }
    for (const size of [first, whole.length / 2, whole.length - 1])
      await expect(unpackedLog('x', new Blob([whole.slice(0, size)]), site)).rejects.toThrow(UsageError);
  });

  it('is refused when it holds what a log cannot hold', async () => {
    const backwards = { ...condensed, trace: { ...condensed.trace, time: condensed.trace.time.toReversed() } };
    const packed = await packedLog({ ...log, records: [backwards] }, site);
    await expect(unpackedLog('x', packed, site)).rejects.toThrow(/damaged \(beam "a": row \d does not follow/);
  });

  it('of another version asks for a newer notebook', async () => {
    await expect(unpackedLog('x', new Blob(['beamkeep-records/12\nabc']), site)).rejects.toThrow(
      /of version "12", .* newer notebook/,
    );
  });

  it('is refused with a site that would have read the log otherwise, and names what differs', async () => {
    const packed = await packedLog(log, site);
    const open = (changed: Site): Promise<unknown> => unpackedLog('x', packed, changed);
    await expect(open(siteWith({ cleanAir: 98 }))).rejects.toThrow(
      'was read with a: cleanAir 100, and the site now says 98',
    );
    await expect(open(siteWith({ alarmThreshold: 25 }))).rejects.toThrow(/a: alarmThreshold 35, .* now says 25/);
    await expect(open({ ...site, beams: site.beams.slice(1) })).rejects.toThrow(/now says no such beam/);
    await expect(open(siteWith({ alarmDelay: 20, separation: 50, latching: false }))).resolves.toEqual(log);
  });

  it('that kept every sample bears other thresholds', async () => {
    const whole = { ...log, records: [{ ...condensed, trace: testTrace([0, 1000], [1, 0.5]) }] };
    const packed = await packedLog(whole, site);
    await expect(unpackedLog('x', packed, siteWith({ alarmThreshold: 25 }))).resolves.toEqual(whole);
  });
});
