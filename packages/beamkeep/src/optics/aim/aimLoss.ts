import { UsageError } from '../../columns/index.js';
import { halfPowerLoss } from '../../numbers/index.js';
import { studentQuantile } from '../../statistics/index.js';
import type { Estimate } from '../estimate.js';
import type { LobeFit } from './fitLobe.js';

/**
 * What a head loses by standing at an angle instead of on the peak of its lobe.
 *
 * @param fit of the aim scan
 * @param angles where the head was left, one an axis [unit of the scan's angles]
 * @returns loss of what comes by the beam, the floor taken off [dB], with limits from the doubt about centre and half-angle
 * @throws UsageError where the angles are not as many as the axes
 * @example aimLoss(fit, [0.3]).value // 1.08
 */
export function aimLoss(fit: LobeFit, angles: readonly number[]): Estimate {
  const { axes, lobe, covariance } = fit;
  if (angles.length !== axes.length) {
    throw new UsageError(`aimLoss: ${angles.length} angles, but the scan has ${axes.length} axes`);
  }
  const numbers = covariance.length;
  const reach = studentQuantile((1 + fit.confidence) / 2, Math.max(fit.n - numbers, 1));
  const entry = (i: number, j: number) => covariance[i]?.[j] as number;
  const [centreAt, widthAt, powerAt] = [2, 2 + axes.length, 2 + 2 * axes.length]; // places of the fitted numbers
  const halfAngle = (k: number) => lobe.halfAngle[k] as number;
  const turns = angles.map((angle, k) => (angle - (lobe.centre[k] as number)) / halfAngle(k));
  const off = Math.hypot(...turns);
  const lossOf = (turn: number) => halfPowerLoss.value * turn ** lobe.power;
  const value = lossOf(off);

  // well off the peak: the logarithm of the loss, to first order in all that was fitted
  const slopes = new Float64Array(numbers);
  turns.forEach((turn, k) => {
    slopes[centreAt + k] = (-lobe.power * turn) / (off * off * halfAngle(k));
    slopes[widthAt + k] = (-lobe.power * turn * turn) / (off * off);
  });
  if (powerAt < numbers) slopes[powerAt] = lobe.power * Math.log(off);
  const variance = slopes.reduce(
    (sum, slope, i) => sum + slopes.reduce((inner, other, j) => inner + slope * other * entry(i, j), 0),
    0,
  );
  const margin = reach * Math.sqrt(Math.max(variance, 0)); // doubts that cancel may round to less than none
  if (margin < 1) return { value, low: value * Math.exp(-margin), high: value * Math.exp(margin) };

  // near the peak the loss is not linear in anything: as far off as the centres may be, at the least and the most
  const margins = turns.map((_, k) => (reach * Math.sqrt(entry(centreAt + k, centreAt + k))) / halfAngle(k));
  const at = (end: (turn: number, may: number) => number) =>
    lossOf(Math.hypot(...turns.map((turn, k) => end(Math.abs(turn), margins[k] as number))));
  return { value, low: at((turn, may) => Math.max(turn - may, 0)), high: at((turn, may) => turn + may) };
}
