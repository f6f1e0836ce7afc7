import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Trace } from '../columns/index.js';
import { parseSite } from '../site/index.js';
import { beamResponder } from './beamResponder.js';
import { equipmentObscuration } from './equipmentObscuration.js';
import { resetsOf } from './resetsOf.js';
import type { Change } from './responder.js';
import { respondToTrace } from './respondToTrace.js';

interface Row {
  readonly time: number;
  readonly until?: number;
  readonly level: number;
  readonly count?: number;
}

/** A trace from rows in seconds. */
function traceOf(rows: readonly Row[]): Trace {
  const level = Float64Array.from(rows, (row) => row.level);
  return {
    time: Float64Array.from(rows, ({ time }) => time * 1000),
    until: Float64Array.from(rows, ({ time, until = time }) => until * 1000),
    level,
    low: Float32Array.from(level),
    high: Float32Array.from(level),
    spread: new Float32Array(rows.length),
    count: Uint32Array.from(rows, ({ count = 1 }) => count),
  };
}
const quiet = (from: number, minutes: number, level: number): Row[] =>
  Array.from({ length: minutes }, (_, i) => ({ time: from + 60 * i, until: from + 60 * i + 59, level, count: 60 }));
const each = (from: number, to: number, level: number): Row[] =>
  Array.from({ length: to - from + 1 }, (_, i) => ({ time: from + i, level }));

const site = (more: object = {}, visits: object[] = []) =>
  parseSite({ beams: [{ id: 'B1', layout: 'reflective', separation: 62, ...more }], visits });
const respond = (rows: readonly Row[], more: object = {}, visits: object[] = []) => {
  const { beams, visits: read } = site(more, visits);
  const [beam] = beams;
  if (!beam) throw new Error('no beam');
  const { changes, fires } = respondToTrace(traceOf(rows), beam, read, 1);
  return {
    changes: changes.map(({ time, state }) => `${time / 1000} ${state}`).join(', '),
    fires: fires.map(({ start, end }) => [start / 1000, end / 1000]),
  };
};

describe('respondToTrace', () => {
  it('finds nothing in a quiet log', () =>
    expect(respond(quiet(0, 60, 0.98))).toEqual({ changes: '0 normal', fires: [] }));

  it('dates a change to the sample in an eventful minute', () =>
    expect(respond([...quiet(0, 5, 0.98), ...each(300, 359, 0.4), ...quiet(360, 5, 0.98)])).toEqual({
      changes: '0 normal, 310 fire',
      fires: [[300, 359]],
    }));

  it('dates a change within a quiet row by the spacing of its samples', () =>
    expect(respond([...quiet(0, 5, 0.98), ...quiet(300, 5, 0.4)])).toEqual({
      changes: '0 normal, 310 fire',
      fires: [[300, 599]],
    }));

  it('takes a delay longer than a row through several', () =>
    expect(respond([...quiet(0, 5, 0.98), ...quiet(300, 5, 0.4)], { alarmDelay: 150 }).changes).toBe(
      '0 normal, 450 fire',
    ));

  it('tells every stretch past the threshold, latched or not', () =>
    expect(respond([...quiet(0, 2, 0.4), ...quiet(120, 2, 1), ...quiet(240, 2, 0.3), ...quiet(360, 2, 1)])).toEqual({
      changes: '0 normal, 10 fire',
      fires: [
        [0, 119],
        [240, 359],
      ],
    }));

  it('leaves out what held for too short', () =>
    expect(respond([...quiet(0, 2, 1), ...each(120, 125, 0.4), ...each(126, 200, 1)]).fires).toEqual([]));

  it('takes an object in the path for a fault, and not for smoke', () =>
    expect(
      respond([...quiet(0, 2, 1), ...each(120, 179, 0.01), ...quiet(180, 60, 0.01), ...quiet(3780, 2, 1)]),
    ).toEqual({
      changes: '0 normal, 130 fault, 3780 normal',
      fires: [],
    }));

  it('resets within a row', () =>
    expect(
      respond([...quiet(0, 10, 0.4), ...quiet(600, 2, 1)], {}, [{ time: '1970-01-01T00:05:30.5Z', work: 'reset' }])
        .changes,
    ).toBe('0 normal, 10 fire, 331 normal, 341 fire'));

  it('sees what the equipment sees', () => {
    const rows = [...quiet(0, 2, 1), ...quiet(120, 3, 0.6)];
    expect(respond(rows, { covered: 20 }).fires).toEqual([]);
    expect(respond(rows, { covered: 20, coveredSubtracted: true }).fires).toEqual([[120, 299]]);
  });

  it('takes a trace of two samples a row and one of single rows for the same log', () => {
    const single = [...each(0, 119, 1), ...each(120, 239, 0.5), ...each(240, 359, 1)];
    const paired = [...quiet(0, 2, 1), ...quiet(120, 2, 0.5), ...quiet(240, 2, 1)];
    expect(respond(paired)).toEqual(respond(single));
  });
});

/** The plain way: every sample of every row is fed, none is left out. */
function sampleBySample(rows: readonly Row[], more: object, visits: object[]): { changes: Change[]; smoke: Change[] } {
  const { beams, visits: read } = site(more, visits);
  const [beam] = beams;
  if (!beam) throw new Error('no beam');
  const [changes, smoke]: [Change[], Change[]] = [[], []];
  const plain = { sampling: 'regular', intervalSeconds: 1 } as const;
  const settled = beamResponder(beam, { ...plain, resets: resetsOf(read, 'B1') }, (change) => changes.push(change));
  const open = beamResponder({ ...beam, latching: false, hysteresis: 0 }, { ...plain, resets: [] }, (change) =>
    smoke.push(change),
  );
  for (const { time, until = time, level } of rows) {
    for (let second = time; second <= until; second++) {
      for (const response of [settled, open]) response.feed(second * 1000, equipmentObscuration(beam, level));
    }
  }
  return { changes, smoke };
}

describe('a condensed log', () => {
  const levels = [1, 1, 1, 0.93, 0.91, 0.89, 0.82, 0.78, 0.7, 0.66, 0.64, 0.5, 0.12, 0.08, 0.005];
  it('law: gives what every sample of it would have given, one by one', () =>
    fc.assert(
      fc.property(
        // Stretches of alike rows: level, rows, samples in a row.
        fc.array(fc.tuple(fc.constantFrom(...levels), fc.constantFrom(1, 2, 5), fc.constantFrom(1, 7, 60)), {
          minLength: 2,
          maxLength: 12,
        }),
        fc.record({
          latching: fc.boolean(),
          hysteresis: fc.constantFrom(0, 3, 20),
          alarmThreshold: fc.constantFrom(8, 25, 35),
          alarmDelay: fc.constantFrom(0, 3, 10, 90),
          faultDelay: fc.constantFrom(0, 10, 90),
        }),
        fc.array(fc.nat({ max: 400 }), { maxLength: 3 }),
        (drawn, more, resets) => {
          // A threshold must lie above its hysteresis.
          const settings = { ...more, hysteresis: Math.min(more.hysteresis, more.alarmThreshold - 1) };
          let from = 0;
          const rows = drawn.flatMap(([level, alike, count]) =>
            Array.from({ length: alike }, () => {
              const row = { time: from, until: from + count - 1, level, count };
              from += count;
              return row;
            }),
          );
          const visits = resets.map((second) => ({ time: new Date(second * 1000).toISOString(), work: 'reset' }));
          const plain = sampleBySample(rows, settings, visits);
          const { changes, fires } = respond(rows, settings, visits);
          expect(changes).toBe(plain.changes.map(({ time, state }) => `${time / 1000} ${state}`).join(', '));
          expect(fires.map(([start]) => start)).toEqual(
            plain.smoke.filter(({ state }) => state === 'fire').map(({ since }) => since / 1000),
          );
        },
      ),
      { seed: 20270411, numRuns: 1000 },
    ));
});
