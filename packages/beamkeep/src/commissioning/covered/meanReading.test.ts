import { describe, expect, it } from 'vitest';
import { random } from '../../simulation/index.js';
import { meanReading } from './meanReading.js';

const whole = (values: Float64Array) => ({ from: 0, to: values.length });

describe('meanReading', () => {
  it('knows a mean by the root of the number, where neighbours are unrelated', () => {
    const chance = random(1, 'mean');
    const values = Float64Array.from({ length: 400 }, () => chance.normal());
    const { standardError, spread } = meanReading(values, whole(values), 0);
    expect(standardError / (spread / 20)).toBeGreaterThan(0.85);
    expect(standardError / (spread / 20)).toBeLessThan(1.25);
  });
  it('counts samples that resemble their neighbours for fewer than they are', () => {
    const chance = random(2, 'mean');
    let level = 0;
    const values = Float64Array.from({ length: 400 }, () => {
      level = 0.9 * level + chance.normal();
      return level;
    });
    const { standardError, spread } = meanReading(values, whole(values), 0);
    expect(standardError / (spread / 20)).toBeGreaterThan(3); // the root of 1.9 / 0.1 is 4.4
  });
  it('knows a steady rounded reading by its step alone', () => {
    const values = new Float64Array(50).fill(0.4);
    const { standardError, degreesOfFreedom } = meanReading(values, whole(values), 0.1);
    expect(standardError).toBeCloseTo(0.1 / Math.sqrt(12), 12);
    expect(degreesOfFreedom).toBe(Number.POSITIVE_INFINITY);
  });
});
