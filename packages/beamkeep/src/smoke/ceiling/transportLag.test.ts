import { describe, expect, it } from 'vitest';
import { transportLag } from './transportLag.js';

describe('transportLag', () => {
  it('NUREG-1805, ch. 11: 0.74 s for 1000 kW, 13 ft high, 10 ft aside', () => {
    const { rising, outward } = transportLag(1000, 3.9624, 3.048);
    expect(Math.abs(rising + outward - 0.74)).toBeLessThanOrEqual(0.005);
  });
  it('Mowrer: ten seconds in a hall, 7.8 s up and 2.7 s along for 100 kW, 20 m high, 10 m aside', () => {
    const { rising, outward } = transportLag(100, 20, 10);
    expect(rising).toBeCloseTo(7.8, 1);
    expect(outward).toBeCloseTo(2.7, 1);
  });
  it('says what must change', () => expect(() => transportLag(0, 1, 1)).toThrow('heat release rate 0 kW'));
});
