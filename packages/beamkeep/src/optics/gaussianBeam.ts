import { gaussianHalfWidth } from '../numbers/index.js';

/** Widths of a Gaussian spot, all in the unit of its radius. */
export interface SpotWidths {
  /** Distance from the middle at which irradiance halves. */
  readonly halfPowerHalfWidth: number;
  /** Full width at half of the greatest irradiance. */
  readonly fullWidthHalfMaximum: number;
  /** Distance at which irradiance falls to 1/e. */
  readonly radiusAtInverseE: number;
  /** Standard deviation of the irradiance along a line. */
  readonly standardDeviation: number;
}

/**
 * The widths by which a Gaussian spot is described.
 *
 * @param radius w: distance from the middle at which irradiance exp(-2 r^2 / w^2) falls to 1/e^2 [any unit]
 * @example spotWidths(1).halfPowerHalfWidth // 0.5887
 */
export const spotWidths = (radius: number): SpotWidths => ({
  halfPowerHalfWidth: gaussianHalfWidth.value * radius,
  fullWidthHalfMaximum: 2 * gaussianHalfWidth.value * radius,
  radiusAtInverseE: radius * Math.SQRT1_2,
  standardDeviation: radius / 2,
});

/**
 * Share of a Gaussian beam's power that a round aperture in its middle lets through.
 *
 * @param apertureRadius [any unit], 0 or more
 * @param radius w of the beam, where irradiance falls to 1/e^2 [same unit], above 0
 * @returns 0 to 1; small apertures keep their digits
 *
 * Source: 1 - exp(-2 a^2 / w^2), from memory; 86 % within w was read.
 * @example apertureShare(1, 1) // 0.8647
 */
export const apertureShare = (apertureRadius: number, radius: number): number =>
  -Math.expm1(-2 * (apertureRadius / radius) ** 2);
