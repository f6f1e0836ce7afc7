import { describe, expect, it } from 'vitest';
import { BucketRows } from './bucketRows.js';
import { RunningNoise } from './runningNoise.js';

const quiet = { middle: 100, low: 99.4, high: 100.6, spread: 0.25, count: 60 };

/** Running noise, asked bucket by bucket. */
function running(quantum: number) {
  const noise = new RunningNoise(quantum);
  const { columns } = new BucketRows();
  return {
    score({ middle, low, high, spread, count }: typeof quiet): number {
      columns.middle[0] = middle;
      columns.low[0] = low;
      columns.high[0] = high;
      columns.spread[0] = spread;
      columns.count[0] = count;
      return noise.score(columns, 0);
    },
  };
}

/** Noise that has seen some quiet buckets. */
function settled() {
  const noise = running(0.1);
  for (let k = 0; k < 50; k++) noise.score({ ...quiet, middle: 100 + (k % 2) * 0.05 });
  return noise;
}

describe('RunningNoise', () => {
  it('quiet buckets are not eventful, the first one neither', () => {
    expect(running(0.1).score(quiet)).toBe(0);
    expect(settled().score(quiet)).toBeLessThan(1);
  });
  it('a step of the level is', () =>
    expect(settled().score({ ...quiet, middle: 94, low: 93.4, high: 94.6 })).toBeGreaterThan(1));
  it('a spike within a bucket is', () => expect(settled().score({ ...quiet, low: 90 })).toBeGreaterThan(1));
  it('an event does not raise what is usual; a rougher hour or two does', () => {
    const noise = settled();
    noise.score({ ...quiet, low: 10, spread: 20 });
    expect(noise.score({ ...quiet, low: 90 })).toBeGreaterThan(1);
    const rough = { ...quiet, low: 95, high: 104, spread: 1.5 };
    for (let k = 0; k < 120; k++) noise.score(rough);
    expect(noise.score(rough)).toBeLessThan(1);
  });
  it('a signal that stands still has no events', () => {
    const noise = running(0);
    const still = { ...quiet, low: 100, high: 100, spread: 0 };
    for (let k = 0; k < 5; k++) expect(noise.score(still)).toBe(0);
  });
});
