import { describe, expect, it } from 'vitest';
import { rearm, runCounter } from './runCounter.js';

describe('runCounter', () => {
  it('gives one signal for each delay that a run outlasts', () => {
    const runs = runCounter(1, [0, 10, 20]);
    runs.rise(0, 0);
    for (const time of [0, 5, 10, 15]) runs.hold(0, time);
    expect(runs.counts.map((row) => [...row])).toEqual([[1, 1, 0]]);
  });
  it('is armed again by ten minutes below', () => {
    const runs = runCounter(1, [0]);
    const signal = (time: number) => {
      runs.rise(0, time);
      runs.hold(0, time);
      runs.stop(0);
      runs.fall(0, time + 1);
    };
    signal(0);
    signal(rearm);
    expect(runs.counts[0]?.[0]).toBe(1);
    signal(2 * rearm + 1);
    expect(runs.counts[0]?.[0]).toBe(2);
  });
  it('starts afresh after a stop', () => {
    const runs = runCounter(1, [10]);
    runs.hold(0, 0);
    runs.stop(0);
    runs.hold(0, 8);
    runs.hold(0, 12);
    expect(runs.counts[0]?.[0]).toBe(0);
  });
  it('held until just before an instant, a delay must be shorter', () => {
    const runs = runCounter(1, [10]);
    runs.hold(0, 0);
    runs.holdBefore(0, 10);
    expect(runs.counts[0]?.[0]).toBe(0);
    runs.holdBefore(0, 11);
    expect(runs.counts[0]?.[0]).toBe(1);
  });
});
