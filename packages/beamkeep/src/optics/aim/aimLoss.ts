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
  const turns = angles.map((angle, k) => {
    const [c, h] = [2 + k, 2 + axes.length + k]; // the parameters centre and logarithm of the half-angle
    const halfAngle = lobe.halfAngle[k] as number;
    const value = (angle - (lobe.centre[k] as number)) / halfAngle;
    const entry = (i: number, j: number) => covariance[i]?.[j] as number;
    const variance = entry(c, c) / halfAngle ** 2 + (2 * value * entry(c, h)) / halfAngle + value ** 2 * entry(h, h);
    const margin = reach * Math.sqrt(variance);
    return { value, low: Math.max(Math.abs(value) - margin, 0), high: Math.abs(value) + margin };
  });
  const loss = (end: 'value' | 'low' | 'high') =>
    halfPowerLoss.value * Math.hypot(...turns.map((turn) => turn[end])) ** lobe.power;
  return { value: loss('value'), low: loss('low'), high: loss('high') };
}
