import { describe, expect, it } from 'vitest';
import { random } from '../random.js';
import { noiseFigures } from './noiseFigures.js';

const time = Float64Array.from({ length: 60 * 24 * 10 }, (_, k) => k * 60_000);
const draw = random(1, 'noise');
const noise = Float32Array.from(time, () => 0.01 * draw.normal());

describe('noiseFigures', () => {
  const figures = noiseFigures(time, noise, 0.001);

  it('measures samples and hourly medians (spread of a median of 60: 1.2533 spreads over the root of 60)', () => {
    expect(figures.samplePercent).toBeCloseTo(1, 1);
    expect(figures.hourlyPercent).toBeCloseTo((1.2533 * 1) / Math.sqrt(60), 1);
  });

  it('sets the limits by the rule: 1.5 %, three spreads, one and a half steps', () => {
    expect(figures.slowLimitPercent).toBe(1.5);
    expect(figures.fastLimitPercent).toBeCloseTo(3 * figures.samplePercent, 9);
    expect(
      noiseFigures(
        time,
        noise.map(() => 0),
        0.02,
      ).slowLimitPercent,
    ).toBeCloseTo(3, 9);
  });

  it('puts the rounding of the scale under a silent beam', () => {
    expect(
      noiseFigures(
        time,
        noise.map(() => 0),
        0.01,
      ).samplePercent,
    ).toBeCloseTo(1 / Math.sqrt(12), 9);
  });
});
