import { describe, expect, it } from 'vitest';
import { fitLobe } from '../../optics/index.js';
import { random } from '../../simulation/index.js';
import { estimated } from './estimated.js';

const angles = Float64Array.from({ length: 21 }, (_, k) => -2 + 0.2 * k);
const fitOf = (seed: number) => {
  const chance = random(seed, 'estimated');
  return fitLobe(
    angles,
    angles.map((angle) => 100 * 2 ** -(((angle - 0.1) / 0.7) ** 2) + 2 * chance.normal()),
  );
};

describe('estimated', () => {
  it('gives the limits of the fit itself for the numbers that were fitted', () => {
    const fit = fitOf(1);
    const [axis] = fit.axes;
    const centre = estimated(fit, (lobe) => lobe.centre[0] as number);
    expect(centre.value).toBe(axis?.centre.value);
    expect(centre.low).toBeCloseTo(axis?.centre.low as number, 8);
    expect(centre.high).toBeCloseTo(axis?.centre.high as number, 8);
  });
  it('limits of 95 % hold the truth about so often', () => {
    const holding = Array.from({ length: 40 }, (_, seed) =>
      estimated(fitOf(seed), ({ halfAngle, centre }) => (halfAngle[0] as number) + (centre[0] as number)),
    ).filter(({ low, high }) => low <= 0.8 && 0.8 <= high).length;
    expect(holding / 40).toBeGreaterThanOrEqual(0.86); // binomial, 40 trials: 0.95 less two and a half spreads
  });
  it('an endless quantity has no limits of its own', () =>
    expect(estimated(fitOf(1), () => Number.POSITIVE_INFINITY)).toEqual({
      value: Number.POSITIVE_INFINITY,
      low: Number.POSITIVE_INFINITY,
      high: Number.POSITIVE_INFINITY,
    }));
});
