import { describe, expect, it } from 'vitest';
import { normalNoise } from '../normalNoise.js';
import { lombScargle } from './lombScargle.js';
import { periodogram } from './welch.js';

describe('lombScargle', () => {
  it('law: evenly spaced samples give the periodogram, but for its scale', () => {
    const values = Float64Array.from({ length: 64 }, normalNoise(76));
    const even = periodogram(values);
    const time = values.map((_, i) => i);
    const found = lombScargle(time, values, even.frequency.subarray(1, 32));
    found.forEach((power, k) => {
      expect(power).toBeCloseTo((even.power[k + 1] as number) / 2, 10);
    });
  });
  it('half the rate: the sine is nothing on every sample and explains nothing', () => {
    const [power] = lombScargle([0, 1, 2, 3], [1, -1, 1, -1], [0.5]);
    expect(power).toBeCloseTo(2, 10);
  });
  it('leaves missing values out, and starts its clock where it likes', () => {
    const time = [1e12, 1e12 + 1, 1e12 + 2.5, 1e12 + 4];
    const [shifted] = lombScargle(time, [1, Number.NaN, -1, 2], [0.21]);
    const [plain] = lombScargle([0, 2.5, 4], [1, -1, 2], [0.21]);
    expect(shifted).toBeCloseTo(plain as number, 12);
  });
  it('nothing present gives nothing', () => expect(lombScargle([], [], [1])[0]).toBeNaN());
});
