import { describe, expect, it } from 'vitest';
import { fitLobe, type Lobe, type LobeFit } from '../../optics/index.js';
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
  describe('derived: to first order, of doubts that are given', () => {
    const lobe: Lobe = { peak: 100, floor: 5, centre: [0.1, -0.2], halfAngle: [0.7, 0.5], power: 3 };
    /** A fit of so many readings whose numbers have a variance of 1e-6 each, the first two of 1, and some covariances. */
    const given = (
      n: number,
      pairs: readonly (readonly [i: number, j: number, covariance: number])[] = [],
      size = 7,
    ) => {
      const covariance = Array.from({ length: size }, (_, i) =>
        Float64Array.from({ length: size }, (__, j) => (i === j ? (i < 2 ? 1 : 1e-6) : 0)),
      );
      for (const [i, j, value] of pairs)
        for (const [row, column] of [
          [i, j],
          [j, i],
        ] as const)
          (covariance[row] as Float64Array)[column] = value;
      return { lobe, covariance, n, confidence: 0.95 } as unknown as LobeFit;
    };
    const reach = (fit: LobeFit, quantity: (lobe: Lobe) => number) => {
      const { value, low, high } = estimated(fit, quantity);
      expect((low + high) / 2).toBeCloseTo(value, 9);
      return (high - low) / 2;
    };
    const many = given(1e7);
    const t = 1.96;
    it('peak, floor and centres by their own errors, half-angles and power by their share', () => {
      expect(reach(many, ({ peak }) => peak)).toBeCloseTo(t, 3);
      expect(reach(many, ({ floor }) => 2 * floor)).toBeCloseTo(2 * t, 3);
      expect(reach(many, ({ centre }) => centre[1] as number)).toBeCloseTo(0.001 * t, 6);
      expect(reach(many, ({ halfAngle }) => halfAngle[1] as number)).toBeCloseTo(0.5 * 0.001 * t, 6);
      expect(reach(many, ({ power }) => power)).toBeCloseTo(3 * 0.001 * t, 5);
    });
    it('what hangs on two numbers by both, and by what they share', () => {
      const sum = ({ centre }: Lobe) => (centre[0] as number) + (centre[1] as number);
      expect(reach(many, sum)).toBeCloseTo(Math.SQRT2 * 0.001 * t, 6);
      expect(reach(given(1e7, [[2, 3, 1e-6]]), sum)).toBeCloseTo(2 * 0.001 * t, 6);
      expect(reach(given(1e7, [[2, 3, -1e-6]]), sum)).toBeCloseTo(0, 6);
    });
    it('a power that was not fitted has no doubt', () =>
      expect(reach(given(1e7, [], 6), ({ power }) => power)).toBe(0));
    it('few readings by Student: ten less seven, and one at the least', () => {
      const peak = ({ peak: one }: Lobe) => one;
      expect(reach(given(10), peak)).toBeCloseTo(3.182, 3);
      expect(reach(given(7), peak)).toBeCloseTo(12.706, 2);
    });
    it('what is missing stays missing', () =>
      expect(estimated(many, () => Number.NaN)).toEqual({ value: Number.NaN, low: Number.NaN, high: Number.NaN }));
  });
});
