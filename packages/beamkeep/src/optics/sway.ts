import { halfPowerLoss } from '../numbers/index.js';

/*
 * A head that sways by d cos(turn) about an offset o loses  L (o + d cos)^2 / h^2  decibels, L = 3.01 dB, h the
 * half-angle. The square has exactly two harmonics:
 *
 *     mean  L (o^2 + d^2 / 2) / h^2      first  2 L o d / h^2      second  L d^2 / 2 / h^2      first : second = 4 o / d
 *
 * So the second harmonic measures the sway, and the ratio measures the offset by the sway: one dip a cycle on the
 * flank, two when centred. Dirt adds to the mean only.
 */

/** What a sinusoidal sway shows in the loss. */
export interface SwayHarmonics {
  /** Mean loss [dB]. */
  readonly mean: number;
  /** Amplitude once a cycle [dB]. */
  readonly first: number;
  /** Amplitude twice a cycle [dB]. */
  readonly second: number;
  /** First over second: four times the offset over the sway. */
  readonly ratio: number;
}

/**
 * Harmonics of the loss of a swaying head.
 *
 * @param offset turn away from the peak in the middle of the sway [degrees or another unit]
 * @param sway amplitude of the sway [same unit]
 * @param halfAngle turn at which the received level halves [same unit], above 0
 *
 * Exact for a sine; heat moves buildings otherwise, so prefer `movementFit` where there is a proxy.
 * Source: derived; loss in dB is quadratic in angle.
 * @example swayHarmonics(0.3, 0.075, 0.5).ratio // 16
 */
export function swayHarmonics(offset: number, sway: number, halfAngle: number): SwayHarmonics {
  const unit = halfPowerLoss.value / halfAngle ** 2;
  return {
    mean: unit * (offset ** 2 + sway ** 2 / 2),
    first: 2 * unit * Math.abs(offset * sway),
    second: (unit * sway ** 2) / 2,
    ratio: sway === 0 ? Number.NaN : Math.abs((4 * offset) / sway),
  };
}

/** Offset and sway in half-angles. */
export interface SwayAim {
  /** Turn away from the peak along the sway [half-angles], 0 or more. */
  readonly offset: number;
  /** Amplitude of the sway [half-angles]. */
  readonly sway: number;
}

/**
 * Offset and sway that the two harmonics of the loss tell: the inverse of `swayHarmonics`.
 *
 * @param first amplitude once a cycle [dB]
 * @param second amplitude twice a cycle [dB], above 0; NaN comes back where there is none
 * @example swayAim(0.5419, 0.0339).offset // 0.6
 */
export function swayAim(first: number, second: number): SwayAim {
  const sway = Math.sqrt((2 * second) / halfPowerLoss.value);
  return { offset: first / (2 * halfPowerLoss.value * sway), sway };
}
