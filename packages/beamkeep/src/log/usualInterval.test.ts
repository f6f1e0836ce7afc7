import { describe, expect, it } from 'vitest';
import { IntervalSeen } from './usualInterval.js';

describe('IntervalSeen', () => {
  it('median of the differences between usable samples [s], from block to block', () => {
    const interval = new IntervalSeen();
    interval.see(Float64Array.of(0, 60_000, 120_000), Float64Array.of(1, Number.NaN, 1), 3);
    interval.see(Float64Array.of(180_000, 240_000), Float64Array.of(1, 1), 2);
    expect(interval.seconds()).toBe(60);
  });
  it('an outage does not matter', () => {
    const interval = new IntervalSeen();
    interval.see(Float64Array.of(0, 1000, 2000, 9_000_000), new Float64Array(4), 4);
    expect(interval.seconds()).toBe(1);
  });
  it('of one sample there is none', () => {
    const interval = new IntervalSeen();
    interval.see(Float64Array.of(5), Float64Array.of(1), 1);
    expect(interval.seconds()).toBe(0);
  });
});
