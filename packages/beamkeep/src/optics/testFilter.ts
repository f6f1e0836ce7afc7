import { levelToDecibels, levelToPercent } from '../attenuation/index.js';

/** What a filter takes of the light. */
export interface FilterLoss {
  /** Obscuration [%]. */
  readonly percent: number;
  /** Loss [dB]. */
  readonly decibels: number;
}

/**
 * Obscuration by a filter that the light crosses once or twice.
 *
 * @param transmittance of the filter in a single pass, at the beam's wavelength, 0 to 1
 * @param crossings 2 before the head of a reflective beam, out and back; 1 before an end-to-end receiver
 *
 * A cover on the reflector is no filter: it is met once, see `coverObscuration`. Many gels for visible light pass near
 * infrared (common practice, no source). Source: derived.
 * @example filterLoss(0.65, 2).percent // 57.75
 */
export function filterLoss(transmittance: number, crossings: 1 | 2): FilterLoss {
  const level = transmittance ** crossings;
  return { percent: levelToPercent(level), decibels: levelToDecibels(level) };
}
