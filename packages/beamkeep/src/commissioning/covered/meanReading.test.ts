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
  it('derived: of 1, 2, 4, 7 the mean is 3.5, the spread root 7, known to half of that where neighbours are unrelated', () => {
    // Neighbours: (-2.5 x -1.5 + -1.5 x 0.5 + 0.5 x 3.5) / 21 = 0.226 alike, so 4 count for 2.52.
    const values = Float64Array.of(99, 1, 2, 4, 7, 99);
    const { samples, mean, spread, standardError, degreesOfFreedom } = meanReading(values, { from: 1, to: 5 }, 0);
    expect([samples, mean]).toEqual([4, 3.5]);
    expect(spread).toBeCloseTo(Math.sqrt(7), 12);
    const alike = 4.75 / 21;
    const independent = (4 * (1 - alike)) / (1 + alike);
    expect(standardError).toBeCloseTo(Math.sqrt(7 / independent), 10);
    expect(degreesOfFreedom).toBeCloseTo(independent - 1, 10);
  });
  it('neighbours that go against each other count for no more than they are', () => {
    const values = Float64Array.of(1, 2, 1, 2, 1, 2, 1, 2);
    expect(meanReading(values, whole(values), 0).standardError).toBeCloseTo(Math.sqrt(2 / 7 / 8), 10);
  });
  it('however alike, a stretch counts for two samples at least, and one for one', () => {
    const rising = Float64Array.from({ length: 300 }, (_, row) => row);
    const { standardError, spread, degreesOfFreedom } = meanReading(rising, whole(rising), 0);
    expect(standardError).toBeCloseTo(spread / Math.SQRT2, 9);
    expect(degreesOfFreedom).toBe(1);
    expect(meanReading(Float64Array.of(5), { from: 0, to: 1 }, 0)).toMatchObject({
      samples: 1,
      mean: 5,
      spread: 0,
      standardError: 0,
    });
  });
  it('rounding adds to the doubt, and to how well it is known', () => {
    const values = Float64Array.of(1, 2, 1, 2, 1, 2, 1, 2);
    const [fine, coarse] = [0, 1].map((step) => meanReading(values, whole(values), step));
    expect(coarse?.standardError).toBeCloseTo(Math.sqrt(2 / 7 / 8 + 1 / 12), 10);
    expect(fine?.degreesOfFreedom).toBeCloseTo(7, 10);
    expect(coarse?.degreesOfFreedom).toBeCloseTo(7 * ((1 / 28 + 1 / 12) / (1 / 28)) ** 2, 8);
  });
  it('missing samples are left out', () => {
    const values = Float64Array.of(1, Number.NaN, 3);
    expect(meanReading(values, whole(values), 0)).toMatchObject({ samples: 2, mean: 2 });
  });
});
