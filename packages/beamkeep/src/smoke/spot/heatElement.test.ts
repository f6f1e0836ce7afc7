import { describe, expect, it } from 'vitest';
import { heatElementTime } from './heatElement.js';

const fire = { heat: 1000, radiativeShare: 0.3, ceiling: 3.9624, radius: 3.048 };

describe('heatElementTime', () => {
  it('NUREG-1805, ch. 11: 0.42 s for RTI 5 and 5 K', () => {
    expect(Math.abs(heatElementTime(fire, 5, 5) - 0.42)).toBeLessThanOrEqual(0.005);
  });
  it('never where the jet is not so warm', () => {
    expect(heatElementTime({ ...fire, heat: 1, ceiling: 20 }, 5, 5)).toBe(Number.POSITIVE_INFINITY);
  });
});
