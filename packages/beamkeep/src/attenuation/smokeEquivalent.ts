import {
  flamingExtinction,
  laboratoryWavelength,
  lightEmittingSign,
  reflectingSign,
  usualWavelength,
} from '../numbers/index.js';
import { converted } from './converted.js';
import { extinctionAt } from './extinctionAt.js';
import { extinctionToSoot, specificExtinction } from './soot.js';
import { visibility } from './visibility.js';

/** What a loss would mean if smoke, spread evenly along the whole path, were its only cause. */
export interface SmokeEquivalent {
  /** Extinction coefficient at the beam's wavelength [1/m], natural. */
  readonly extinctionPerMetre: number;
  /** Extinction coefficient of visible light, taken at 633 nm as the fire models do [1/m], natural. */
  readonly visibleExtinctionPerMetre: number;
  /** Distance at which a reflecting sign can just be read [m]. */
  readonly reflectingSignMetres: number;
  /** Distance at which a light-emitting sign can just be read [m]. */
  readonly lightEmittingSignMetres: number;
  /** Mass of soot in the air, if it comes from flames, with the spread of its specific extinction [kg/m3]. */
  readonly flamingSoot: { readonly value: number; readonly low: number; readonly high: number };
  /** Mass of smoke in the air, if it comes from smouldering [kg/m3]; no spread is known. */
  readonly smoulderingSoot: number;
}

/**
 * Visibility and smoke mass that belong to a beam's loss.
 *
 * @param lossDecibels loss of the whole path [dB], 0 or more; Infinity without light
 * @param pathMetres length of smoke that the light crosses [m], more than 0; twice the separation when reflected
 * @param wavelengthNanometres of the beam [nm], more than 0
 * @returns derived quantities; NaN in, NaN out
 * @throws UsageError for a negative loss, or a path or wavelength that is not more than 0
 *
 * Even smoke along the whole path is the thinnest that explains the loss: a plume in its middle is denser, and one
 * sees less far in it. Constants and sources: `flamingExtinction`, `smoulderingExtinction`, `wavelengthPower`,
 * `reflectingSign`, `lightEmittingSign`.
 * @example smokeEquivalent(1.871, 100).reflectingSignMetres // 501: 35 % of a reflective beam of 50 m
 */
export function smokeEquivalent(
  lossDecibels: number,
  pathMetres: number,
  wavelengthNanometres: number = usualWavelength.value,
): SmokeEquivalent {
  const extinctionPerMetre = converted(lossDecibels, 'decibels', 'extinction-per-metre', pathMetres);
  const visible = extinctionAt(extinctionPerMetre, wavelengthNanometres, laboratoryWavelength.value);
  const soot = extinctionToSoot(extinctionPerMetre, specificExtinction('flaming', wavelengthNanometres));
  const spread = flamingExtinction.spread / flamingExtinction.value;
  return {
    extinctionPerMetre,
    visibleExtinctionPerMetre: visible,
    reflectingSignMetres: visibility(visible, reflectingSign.value),
    lightEmittingSignMetres: visibility(visible, lightEmittingSign.value),
    flamingSoot: { value: soot, low: soot / (1 + spread), high: soot / (1 - spread) },
    smoulderingSoot: extinctionToSoot(extinctionPerMetre, specificExtinction('smouldering', wavelengthNanometres)),
  };
}
