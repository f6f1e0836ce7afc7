import { describe, expect, it } from 'vitest';
import { riseTime } from './riseTime.js';

describe('riseTime', () => {
  it('NUREG-1805, ch. 11, Milke: 0.26 s to 10 K for 1000 kW under 13 ft', () => {
    expect(Math.abs(riseTime(1000, 3.9624, 10) - 0.26)).toBeLessThanOrEqual(0.005);
  });
  it('law: later for a smaller fire and under a higher ceiling', () => {
    expect(riseTime(500, 10, 10)).toBeGreaterThan(riseTime(1000, 10, 10));
    expect(riseTime(1000, 12, 10)).toBeGreaterThan(riseTime(1000, 10, 10));
  });
});
