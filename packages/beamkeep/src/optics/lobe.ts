import { UsageError } from '../columns/index.js';
import { halfPowerLoss, pointingFactor } from '../numbers/index.js';

/*
 * A lobe is how the received level falls as the head turns away from its peak. Near the peak it is a Gaussian, and in
 * decibels a parabola: twice as far off costs four times as much.
 *
 *     loss [dB]  0 |____.-''-.____        half-angle: the turn at which the received level halves (3.01 dB),
 *             3.01 |---/------\---        half of the full half-power width of the antenna trade
 *                  |  /        \
 *                   -1    0    +1   turn [half-angles]
 */

/** Decibels lost at the half-angle. */
const atHalfAngle = halfPowerLoss.value;

function refuse(halfAngle: number): void {
  if (!(halfAngle > 0)) throw new UsageError(`lobe: half-angle ${halfAngle} must be above 0`);
}

/**
 * Loss of a Gaussian lobe that is turned away from its peak.
 *
 * @param angle turn away from the peak [degrees, or any unit that halfAngle has too], either sign
 * @param halfAngle turn at which the received level halves [same unit], above 0
 * @param lobes number of equal lobes that are off by the angle: 2 where emitter and receiver turn alike; 1 by default
 * @returns loss [dB], 0 or more; NaN in, NaN out
 * @throws UsageError for a half-angle that is no angle
 *
 * Good to about the half-angle; beyond it real lobes fall more steeply or show side lobes.
 * Source: definition of half power; the antenna rule 12 (angle / full width)^2 dB with its factor unrounded.
 * @example lobeLoss(0.3, 0.5) // 1.084
 */
export function lobeLoss(angle: number, halfAngle: number, lobes = 1): number {
  refuse(halfAngle);
  return lobes * atHalfAngle * (angle / halfAngle) ** 2;
}

/**
 * Turn at which a Gaussian lobe has lost so much: the inverse of `lobeLoss`.
 *
 * @param loss [dB], 0 or more; NaN where negative
 * @param halfAngle turn at which the received level halves [degrees or another unit], above 0
 * @returns turn away from the peak [same unit], 0 or more
 * @throws UsageError for a half-angle that is no angle
 * @example lobeAngle(3.0103, 0.5) // 0.5
 */
export function lobeAngle(loss: number, halfAngle: number): number {
  refuse(halfAngle);
  return halfAngle * Math.sqrt(loss / atHalfAngle);
}

/**
 * Loss of a lobe with a flatter top and steeper sides than a Gaussian (power above 2), or the other way round.
 *
 * @param angle turn away from the peak [degrees or another unit]
 * @param halfAngle turn at which the received level halves [same unit], above 0
 * @param power 2 for a Gaussian
 * @returns loss [dB]: 3.01 at the half-angle whatever the power
 * @throws UsageError for a half-angle that is no angle
 * @example superGaussianLoss(0.25, 0.5, 4) // 0.188
 */
export function superGaussianLoss(angle: number, halfAngle: number, power: number): number {
  refuse(halfAngle);
  return atHalfAngle * Math.abs(angle / halfAngle) ** power;
}

/**
 * Loss by the rule of the antenna trade, which counts the full width and rounds the factor to 12.
 *
 * @param offset turn away from the peak [degrees]
 * @param fullWidth full width at half power [degrees], above 0: twice the half-angle
 * @returns loss [dB]; 0.3 % less than `lobeLoss`
 *
 * Source: Journal of Electronic Defense, October 2016; Maral and Bousquet, 3rd ed., p. 27.
 * @example pointingLoss(2, 12) // 0.333
 */
export function pointingLoss(offset: number, fullWidth: number): number {
  refuse(fullWidth / 2);
  return pointingFactor.value * (offset / fullWidth) ** 2;
}
