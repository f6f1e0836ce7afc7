import { expect, it } from 'vitest';
import { Condenser } from './condenser.js';
import { singleSamples, traceOfBuckets, traceOfSamples } from './traceOf.js';

const scale = { clean: 100, covered: 0, assumed: [] };

it('traceOfSamples: every sample a row, what is the same for all shared', () => {
  const same = singleSamples(5);
  const time = Float64Array.of(1, 2);
  const trace = traceOfSamples(time, Float64Array.of(100, 40), scale, same);
  expect([...trace.level]).toEqual([1, 0.4]);
  expect(trace.until).toBe(time);
  expect([...trace.count, ...trace.spread]).toEqual([1, 1, 0, 0]);
  expect(trace.count.buffer).toBe(same.count.buffer);
});

it('traceOfBuckets: quiet minutes are rows, eventful ones their samples', () => {
  const time = Float64Array.from({ length: 60 }, (_, row) => row * 10_000);
  const values = time.map((_, row) => (row === 31 ? 20 : 100 - (row % 2)));
  const condenser = new Condenser(60_000, [{ step: 1, thresholds: [65] }], 1e6, 1e6);
  condenser.add(time, [values], 0, 60);
  condenser.end();
  const trace = traceOfBuckets(condenser, 0, scale);
  expect([...trace.count]).toEqual([6, 6, 6, 6, ...new Array(18).fill(1), 6, 6, 6]);
  expect(trace.level[4 + 7]).toBe(0.2);
  expect([trace.level[0], trace.low[0], trace.high[0]]).toEqual([0.995, Math.fround(0.99), 1]);
});
