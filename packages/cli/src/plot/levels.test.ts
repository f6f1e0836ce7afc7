import type { Trace } from 'beamkeep/columns';
import { describe, expect, it } from 'vitest';
import { clock } from '../say/times.js';
import { levels } from './levels.js';

const minute = 60_000;
const utc = clock('UTC');

/** A trace of single samples. */
const traceOf = (start: string, step: number, level: readonly number[]): Trace => {
  const time = Float64Array.from(level, (_, row) => Date.parse(start) + row * step);
  return {
    time,
    until: time,
    level: Float64Array.from(level),
    low: Float32Array.from(level),
    high: Float32Array.from(level),
    spread: new Float32Array(level.length),
    count: new Uint32Array(level.length).fill(1),
  };
};

describe('levels', () => {
  it('takes the least and the median of each stretch', () => {
    const trace = traceOf('2027-01-01T00:00:00Z', 20 * minute, [1, 0.9, 0.5, 0.8, 0.7, 0.6]);
    const drawn = levels(trace, 2, utc);
    expect(drawn?.step).toBe(60 * minute);
    expect([...(drawn?.low ?? [])]).toEqual([0.5, Math.fround(0.6)]);
    expect(drawn?.middle[0]).toBeCloseTo(0.9, 2);
    expect(drawn?.middle[1]).toBeCloseTo(0.7, 2);
  });
  it('weighs a condensed row by its samples', () => {
    const trace = { ...traceOf('2027-01-01T00:00:00Z', minute, [0.9, 0.5]), count: Uint32Array.of(60, 1) };
    expect(levels(trace, 1, utc)?.middle[0]).toBeCloseTo(0.9, 2);
  });
  it('starts at a round time of the clock', () => {
    const drawn = levels(traceOf('2027-01-01T08:40:00Z', 60 * minute, Array(400).fill(1)), 20, clock('Asia/Kolkata'));
    expect(drawn?.step).toBe(24 * 60 * minute);
    expect(drawn?.from).toBe(Date.parse('2026-12-31T18:30:00Z'));
  });
  it('shows a hole where there are no samples', () => {
    const trace = traceOf('2027-01-01T00:00:00Z', 1440 * minute, [1, 1, 1]);
    const holed = { ...trace, time: trace.time.map((time, row) => time + (row === 2 ? 1440 * minute : 0)) };
    const drawn = levels({ ...holed, until: holed.time }, 4, utc);
    expect([...(drawn?.low ?? [])]).toEqual([1, 1, Number.NaN, 1]);
  });
  it('never needs more columns than there are, at any length', () => {
    for (const days of [0.001, 0.3, 2, 30, 119, 121, 400, 4000, 40_000]) {
      const trace = traceOf('2027-01-01T13:07:00Z', days * 1440 * minute, [1, 0.9]);
      const drawn = levels(trace, 60, utc);
      expect(drawn?.low.length).toBeLessThanOrEqual(60);
      expect(drawn?.low.at(-1)).toBeCloseTo(0.9, 6);
    }
  });
  it('is undefined without samples', () =>
    expect(levels(traceOf('2027-01-01T00:00:00Z', 1, []), 60, utc)).toBeUndefined());
});
