import { describe, expect, it } from 'vitest';
import { lobe, wide } from '../../../../../tests/optics/scans.js';
import { halfPowerLoss } from '../../numbers/index.js';
import { aimLoss } from './aimLoss.js';
import { fitLobe, type LobeFit } from './fitLobe.js';
import { type Lobe, lobeLevel } from './lobeModel.js';

const L = halfPowerLoss.value; // 3.0103 dB at the half-angle
const t95 = 1.95996; // normal, since n is large

/** A fit with so much doubt: variances and covariances of peak, floor, centres, logarithms of half-angles, power. */
function fitOf(lobe: Partial<Lobe>, covariance: readonly (readonly number[])[], n = 1e7, confidence = 0.95): LobeFit {
  const whole = { peak: 100, floor: 0, centre: [0.1], halfAngle: [0.5], power: 2, ...lobe };
  return { axes: whole.centre.map(() => ({})), lobe: whole, covariance, n, confidence } as unknown as LobeFit;
}
const diagonal = (...variances: readonly number[]) =>
  variances.map((variance, i) => variances.map((_, j) => (i === j ? variance : 0)));

describe('aimLoss off the peak', () => {
  // 0.25 off: half a half-angle, a quarter of 3.01 dB
  it('a centre known to 0.005 in 0.25 is a loss known to 4 %', () => {
    const { value, low, high } = aimLoss(fitOf({}, diagonal(9, 9, 0.005 ** 2, 0)), [0.35]);
    expect(value).toBeCloseTo(L / 4, 9);
    expect(Math.log(high / value)).toBeCloseTo(t95 * 0.04, 5);
    expect(Math.log(value / low)).toBeCloseTo(t95 * 0.04, 5);
  });
  it('a half-angle known to 2 % is a loss known to 4 %', () => {
    const { value, high } = aimLoss(fitOf({}, diagonal(9, 9, 0, 0.02 ** 2)), [-0.15]);
    expect(Math.log(high / value)).toBeCloseTo(t95 * 0.04, 5);
  });
  it('doubts that go against each other leave the loss as it is, doubts that go together add up', () => {
    const together = (covariance: number, at: number) => {
      const [a, b] = [0.005 ** 2, 0.02 ** 2];
      const all = [
        [9, 0, 0, 0],
        [0, 9, 0, 0],
        [0, 0, a, covariance],
        [0, 0, covariance, b],
      ];
      const { value, high } = aimLoss(fitOf({}, all), [at]);
      return Math.log(high / value) / t95;
    };
    expect(together(-1e-4, 0.35)).toBeCloseTo(0, 5);
    expect(together(1e-4, 0.35)).toBeCloseTo(0.08, 5);
    expect(together(1e-4, -0.15)).toBeCloseTo(0, 5); // on the other side of the peak
  });
  it('law: the limits are those of slopes by small steps, over two axes and with a free power', () => {
    const lobe: Lobe = { peak: 100, floor: 0, centre: [0.1, -0.2], halfAngle: [0.5, 0.8], power: 3 };
    const at = [0.45, 0.3];
    const covariance = [0, 1, 2, 3, 4, 5, 6].map((i) =>
      [0, 1, 2, 3, 4, 5, 6].map((j) => (i === j ? 4e-4 : 1e-4 * Math.cos(i + j))),
    );
    /** Logarithm of the loss with one of the fitted numbers changed. */
    const logarithm = (changed: number, by: number) => {
      const moved = (k: number) => (k === changed ? by : 0);
      const turns = at.map(
        (angle, k) =>
          (angle - (lobe.centre[k] as number) - moved(2 + k)) /
          ((lobe.halfAngle[k] as number) * Math.exp(moved(4 + k))),
      );
      return Math.log(L * Math.hypot(...turns) ** (lobe.power * Math.exp(moved(6))));
    };
    const slopes = covariance.map((_, i) => (logarithm(i, 1e-5) - logarithm(i, -1e-5)) / 2e-5);
    const variance = covariance
      .flatMap((row, i) => row.map((entry, j) => (slopes[i] as number) * (slopes[j] as number) * entry))
      .reduce((a, b) => a + b, 0);
    const { value, low, high } = aimLoss(fitOf(lobe, covariance), at);
    expect(Math.log(high / value)).toBeCloseTo(t95 * Math.sqrt(variance), 5);
    expect(Math.log(value / low)).toBeCloseTo(t95 * Math.sqrt(variance), 5);
    expect(value).toBeCloseTo(L * Math.hypot(0.7, 0.625) ** 3, 9);
  });
  it('few readings know less: Student with what is left of them, one at the least', () => {
    const reach = (n: number, confidence?: number) => {
      const { value, high } = aimLoss(fitOf({}, diagonal(9, 9, 0.0005 ** 2, 0), n, confidence), [0.35]);
      return Math.log(high / value) / 0.004;
    };
    expect(reach(8)).toBeCloseTo(2.776, 3); // 4 degrees of freedom
    expect(reach(5)).toBeCloseTo(12.706, 2);
    expect(reach(4)).toBeCloseTo(12.706, 2);
    expect(reach(8, 0.9)).toBeCloseTo(2.132, 3);
  });
});

describe('aimLoss near the peak', () => {
  it('the peak may lie under the head: from nothing to what both may be off together', () => {
    // 0.05 off and a centre known to 0.1: turns of 0.1 and 0.392
    const fit = fitOf({}, diagonal(9, 9, 0.1 ** 2, 0));
    expect(aimLoss(fit, [0.15])).toEqual({
      value: expect.closeTo(L * 0.01, 9),
      low: 0,
      high: expect.closeTo(L * (0.1 + t95 * 0.2) ** 2, 4),
    });
    expect(aimLoss(fit, [0.05]).high).toBeCloseTo(L * (0.1 + t95 * 0.2) ** 2, 4);
    expect(aimLoss(fit, [0.1])).toEqual({ value: 0, low: 0, high: expect.closeTo(L * (t95 * 0.2) ** 2, 4) });
  });
  it('an axis that stands clear of its peak keeps its part', () => {
    // First axis on its peak, second one half-angle off and known to 0.3 half-angles each
    const fit = fitOf({ centre: [0.1, 0], halfAngle: [0.5, 1] }, diagonal(9, 9, 0.15 ** 2, 0.3 ** 2, 0, 0));
    const { value, low, high } = aimLoss(fit, [0.1, 1]);
    expect(value).toBeCloseTo(L, 9);
    expect(low).toBeCloseTo(L * (1 - t95 * 0.3) ** 2, 4);
    expect(high).toBeCloseTo(L * ((t95 * 0.3) ** 2 + (1 + t95 * 0.3) ** 2), 4);
  });
});

it('aimLoss of other than one angle an axis is refused', () => {
  const fit = fitOf({}, diagonal(1, 1, 1, 1));
  expect(() => aimLoss(fit, [])).toThrow('0 angles, but the scan has 1 axes');
  expect(() => aimLoss(fit, [0, 0])).toThrow('2 angles');
});

describe('aimLoss of a fitted scan', () => {
  it('on the peak nothing, at the half-angle 3.01 dB', () => {
    const fit = fitLobe(wide, lobeLevel(lobe(), [wide]));
    expect(aimLoss(fit, [0.12]).value).toBeCloseTo(0, 8);
    expect(aimLoss(fit, [0.62]).value).toBeCloseTo(3.0103, 4);
  });
  it('says what must change', () =>
    expect(() => aimLoss(fitLobe(wide, lobeLevel(lobe(), [wide])), [0, 0])).toThrow(
      '2 angles, but the scan has 1 axes',
    ));
});
