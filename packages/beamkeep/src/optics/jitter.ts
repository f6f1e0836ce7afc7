import { errorFunction } from '../statistics/index.js';
import { lobeLoss } from './lobe.js';

/*
 * A head that shakes faster than it is read shows the mean of its lobe. With normal angles the means are closed forms;
 * the received level follows a power law below its peak.
 */

/** What shaking makes of the received level. */
export interface JitterLoss {
  /** Mean of the received level, share of that on the peak. */
  readonly meanTransmittance: number;
  /** Mean of the loss in decibels [dB]; more than the loss of the mean level. */
  readonly meanLoss: number;
}

/**
 * A head that shakes about one axis.
 *
 * @param offset turn away from the peak about which it shakes [degrees or another unit]
 * @param jitter standard deviation of the turn [same unit]
 * @param halfAngle turn at which the received level halves [same unit], above 0
 *
 * Source: derived; mean of a Gaussian lobe over a normal angle.
 * @example jitterOneAxis(0.2, 0.1, 0.5).meanLoss // 0.602
 */
export function jitterOneAxis(offset: number, jitter: number, halfAngle: number): JitterLoss {
  const decay = Math.LN2 / halfAngle ** 2; // level = exp(-decay turn^2)
  const widened = 1 + 2 * decay * jitter ** 2;
  return {
    meanTransmittance: Math.exp((-decay * offset ** 2) / widened) / Math.sqrt(widened),
    meanLoss: lobeLoss(Math.hypot(offset, jitter), halfAngle),
  };
}

/**
 * A centred head that shakes about both axes alike.
 *
 * @param jitter standard deviation of the turn about each axis [degrees or another unit], above 0
 * @param halfAngle turn at which the received level halves [same unit], above 0
 * @returns means, and `shareBelow`: share of the time at which the level is below a share of the peak
 *
 * Source: derived; the family of Farid and Hranilovic, Journal of Lightwave Technology 25(7), 1702-1710, 2007.
 * @example jitterTwoAxes(0.5, 0.5).shareBelow(0.5) // 0.607
 */
export function jitterTwoAxes(
  jitter: number,
  halfAngle: number,
): JitterLoss & {
  /** Share of the time at which the level is below a share of the peak. */
  readonly shareBelow: (level: number) => number;
} {
  const power = halfAngle ** 2 / (2 * Math.LN2 * jitter ** 2);
  return {
    meanTransmittance: power / (1 + power),
    meanLoss: lobeLoss(Math.SQRT2 * jitter, halfAngle),
    shareBelow: (level) => Math.min(Math.max(level, 0), 1) ** power,
  };
}

/** What a round receiver catches of a beam that wanders over it. */
export interface PointingError {
  /** Aperture against beam, sqrt(pi / 2) a / w. */
  readonly v: number;
  /** Share of the power caught when centred. */
  readonly peakFraction: number;
  /** Radius of the Gaussian by which the share falls with the displacement [unit of the arguments]. */
  readonly equivalentBeamRadius: number;
  /** Equivalent radius over twice the jitter. */
  readonly gamma: number;
  /** Share of the power caught on average. */
  readonly meanFraction: number;
}

/**
 * A beam that wanders over a round receiver which is not small against it.
 *
 * @param apertureRadius of the receiver [any unit], above 0
 * @param beamRadius w of the beam at the receiver [same unit], above 0
 * @param jitter standard deviation of the displacement on each axis [same unit], above 0
 *
 * Other forms fit better where the beam is far larger or smaller than the receiver (Miao and others, 2023, abstract).
 * Source: Farid and Hranilovic, Journal of Lightwave Technology 25(7), 1702-1710, 2007; equations from memory.
 * @example pointingError(0.05, 0.25, 0.05).meanFraction // 0.0665
 */
export function pointingError(apertureRadius: number, beamRadius: number, jitter: number): PointingError {
  const v = (Math.sqrt(Math.PI / 2) * apertureRadius) / beamRadius;
  const inside = errorFunction(v);
  const peakFraction = inside ** 2;
  const equivalentBeamRadius = beamRadius * Math.sqrt((Math.sqrt(Math.PI) * inside) / (2 * v * Math.exp(-v * v)));
  const gamma = equivalentBeamRadius / (2 * jitter);
  return { v, peakFraction, equivalentBeamRadius, gamma, meanFraction: (peakFraction * gamma ** 2) / (gamma ** 2 + 1) };
}
