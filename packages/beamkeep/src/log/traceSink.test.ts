import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type BeamRecord, minute, type Trace } from '../columns/index.js';
import { parseSite, type Site } from '../site/index.js';
import type { RowColumns } from './rowBlock.js';
import { type TraceLimits, TraceSink } from './traceSink.js';

const start = Date.UTC(2027, 0, 4);

const siteOf = (more: object = {}): Site =>
  parseSite({
    format: 'beamkeep-site/1',
    beams: ['a', 'b'].map((id) => ({
      id,
      layout: 'reflective',
      separation: 50,
      signalColumn: id,
      temperatureColumn: 't',
      ...more,
    })),
  });

const columns: RowColumns = {
  names: ['a', 'b', 't'],
  signal: [0, 1],
  stated: new Float64Array(3),
  of: (name) => (name === 't' ? 2 : undefined),
};

/** Three hours at 1 s: noise in tenths, a knock on a, an object before b, an outage, missing cells. */
function threeHours() {
  const rows = 3 * 3600;
  const kept = Array.from({ length: rows }, (_, row) => row).filter((row) => row < 6000 || row >= 6700);
  let state = 7;
  const noise = () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32 - 0.5;
  };
  const tenths = (value: number) => Math.round(value * 10) / 10;
  const time = Float64Array.from(kept, (row) => start + row * 1000);
  const a = Float64Array.from(kept, (row) => (row % 501 === 0 ? Number.NaN : tenths((row < 4000 ? 99 : 91) + noise())));
  const b = Float64Array.from(kept, (row) => tenths(row >= 2000 && row < 2030 ? 3 : 98 + noise()));
  const t = Float64Array.from(kept, (row) => 10 + row / 3600);
  return { time, columns: [a, b, t] };
}
const log = threeHours();

/** Records of the log, its rows given in pieces. */
function recordsOf(pieces: readonly number[], limits: TraceLimits, site = siteOf()): BeamRecord[] {
  const sink = new TraceSink(site, limits);
  sink.header(columns);
  for (let from = 0, at = 0; from < log.time.length; at++) {
    const to = Math.min(log.time.length, from + (pieces[at % pieces.length] ?? 1));
    sink.rows({
      time: log.time.slice(from, to),
      columns: log.columns.map((column) => column.slice(from, to)),
      count: to - from,
    });
    from = to;
  }
  sink.end();
  return sink.records();
}
const samplesOf = ({ count }: Trace): number => count.reduce((sum, n) => sum + n, 0);

describe('TraceSink', () => {
  const all = recordsOf([5000], { readings: 1e6, buckets: 0, eventful: 0 });
  const condensed = recordsOf([5000], { readings: 3000, buckets: 1e6, eventful: 5000 });

  it('keeps every sample of a short log', () => {
    const [a, b] = all;
    expect(a?.trace.time.length).toBe(log.columns[0]?.filter((value) => !Number.isNaN(value)).length);
    expect(b?.trace.level[0]).toBe((log.columns[1]?.[0] ?? 0) / 100);
    expect(a?.trace.until).toBe(a?.trace.time);
    expect([a?.intervalSeconds, a?.quantum]).toEqual([1, 0.001]);
    expect(a?.temperature?.time.length).toBe(180 - 11);
  });

  it('condenses quiet minutes and keeps the samples of eventful ones, and of those around them', () => {
    for (const [at, { trace }] of condensed.entries()) {
      expect(trace.time.length).toBeLessThan(900);
      expect(samplesOf(trace)).toBe(all[at]?.trace.time.length);
    }
    for (const [at, instant] of [
      [0, start + 4000_000],
      [1, start + 2000_000],
      [1, start + 2030_000],
    ] as const) {
      const { time, count } = condensed[at]?.trace ?? { time: new Float64Array(0), count: new Uint32Array(0) };
      const row = time.indexOf(instant);
      expect([count[row - 60], count[row - 1], count[row], count[row + 60]]).toEqual([1, 1, 1, 1]);
    }
  });

  it('always true: rows rise and do not overlap, low <= level <= high, nothing is missing', () => {
    for (const { trace } of condensed) {
      const { time, until, level, low, high, spread, count } = trace;
      for (let row = 0; row < time.length; row++) {
        expect(time[row]).toBeLessThanOrEqual(until[row] ?? 0);
        if (row > 0) expect(until[row - 1]).toBeLessThan(time[row] ?? 0);
        expect(low[row]).toBeLessThanOrEqual(Math.fround(level[row] ?? 0));
        expect(high[row]).toBeGreaterThanOrEqual(Math.fround(level[row] ?? 0));
        expect(count[row]).toBeGreaterThan(0);
        expect(spread[row]).toBeGreaterThanOrEqual(0);
      }
    }
  });

  it('a quiet row says what its samples say', () => {
    const { time, until, level, count } = condensed[0]?.trace ?? (all[0] as BeamRecord).trace;
    const row = count.findIndex((n) => n > 50);
    const own = (all[0] as BeamRecord).trace;
    const from = own.time.indexOf(time[row] ?? 0);
    const to = own.time.indexOf(until[row] ?? 0) + 1;
    const sorted = own.level.slice(from, to).sort();
    expect(to - from).toBe(count[row]);
    expect(level[row]).toBeCloseTo(
      ((sorted[(sorted.length - 1) >> 1] ?? 0) + (sorted[sorted.length >> 1] ?? 0)) / 2,
      12,
    );
  });

  it('law: it does not matter how the rows come', () =>
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 40, max: 3000 }), { minLength: 1, maxLength: 8 }),
        fc.constantFrom(
          { readings: 3000, buckets: 1e6, eventful: 5000 },
          { readings: 100, buckets: 60, eventful: 200 },
          { readings: 1e6, buckets: 0, eventful: 0 },
        ),
        (pieces, limits) => {
          expect(recordsOf(pieces, limits)).toEqual(recordsOf([1e6], limits));
        },
      ),
      { seed: 9, numRuns: 6 },
    ));

  it('the room for samples of eventful minutes is kept', () => {
    for (const eventful of [0, 100, 400]) {
      for (const { trace } of recordsOf([5000], { readings: 100, buckets: 1e6, eventful })) {
        expect(trace.count.filter((n) => n === 1).length).toBeLessThanOrEqual(eventful + 2);
        expect(samplesOf(trace)).toBeGreaterThan(10_000);
      }
    }
  });

  it('where there would be too many buckets they are made wider, and hold what their samples say', () => {
    const { trace: own } = all[0] as BeamRecord;
    for (const buckets of [400, 100, 40]) {
      const [wide] = recordsOf([5000], { readings: 3000, buckets, eventful: 1000 });
      const { time, until, level, low, high, count } = wide?.trace ?? own;
      expect(samplesOf(wide?.trace ?? own)).toBe(own.time.length);
      expect(count.filter((n) => n > 1).length).toBeLessThanOrEqual(buckets);
      for (let row = 0; row < time.length; row++) {
        if (row > 0) expect(until[row - 1]).toBeLessThan(time[row] ?? 0);
        const from = own.time.indexOf(time[row] ?? 0);
        const samples = own.low.slice(from, from + (count[row] ?? 0)).sort();
        expect(own.time[from + samples.length - 1]).toBe(until[row]);
        expect(low[row]).toBeCloseTo(samples[0] ?? 0, 6);
        expect(high[row]).toBeCloseTo(samples.at(-1) ?? 0, 6);
        expect(Math.abs((level[row] ?? 0) - (samples[samples.length >> 1] ?? 0))).toBeLessThan(0.003);
      }
    }
  });

  it('decibels and obscuration become shares of clean air', () => {
    const [a] = recordsOf([5000], { readings: 1e6, buckets: 0, eventful: 0 }, siteOf({ signalUnit: 'obscuration' }));
    expect(a?.trace.level[0]).toBeCloseTo(1 - (log.columns[0]?.[1] ?? 0) / 100, 12);
  });

  it('a minute of the long log is a bucket by the clock', () => {
    const { time, count } = condensed[1]?.trace ?? (all[1] as BeamRecord).trace;
    for (let row = 0; row < time.length; row++) if ((count[row] ?? 0) === 60) expect((time[row] ?? 0) % minute).toBe(0);
  });
});
