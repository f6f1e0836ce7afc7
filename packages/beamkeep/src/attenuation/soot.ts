import { flamingExtinction, laboratoryWavelength, smoulderingExtinction } from '../numbers/index.js';
import { extinctionAt } from './extinctionAt.js';
import { refuseNegative, refuseUnlessPositive } from './refuse.js';

/** Whether the smoke comes from flames (dark soot) or from smouldering (pale droplets). */
export type SmokeKind = 'flaming' | 'smouldering';

/**
 * Light that a kilogram of smoke takes, at the beam's wavelength.
 *
 * @param kind of the smoke
 * @param wavelengthNanometres of the beam [nm], more than 0
 * @returns mass-specific extinction coefficient [m2/kg]; natural logarithm
 * @throws UsageError for a wavelength that is not more than 0
 *
 * Sources and spread: `flamingExtinction` (8700 +- 1100 at 633 nm), `smoulderingExtinction` (from memory).
 * @example specificExtinction('flaming', 880) // 6258
 */
export function specificExtinction(kind: SmokeKind, wavelengthNanometres: number): number {
  const { value } = kind === 'flaming' ? flamingExtinction : smoulderingExtinction;
  return extinctionAt(value, laboratoryWavelength.value, wavelengthNanometres);
}

/**
 * Extinction coefficient of a mass of smoke in the air.
 *
 * @param concentration smoke mass [kg/m3], 0 or more
 * @param specific mass-specific extinction at the beam's wavelength [m2/kg] (`specificExtinction`), more than 0
 * @returns extinction coefficient [1/m], natural; NaN in, NaN out
 * @throws UsageError for a negative concentration or a specific extinction that is not more than 0
 *
 * Source: CFAST Technical Reference Guide, Visibility; FDS Technical Reference Guide, Fire Detection Devices.
 * @example sootToExtinction(71.9e-6, 8700) // 0.6255
 */
export function sootToExtinction(concentration: number, specific: number): number {
  refuseNegative('concentration', concentration, 'kg/m3');
  refuseUnlessPositive('specific extinction', specific, 'm²/kg');
  return concentration * specific;
}

/**
 * Mass of smoke in the air that gives an extinction coefficient: the way back from `sootToExtinction`.
 *
 * @param extinction extinction coefficient at the beam's wavelength [1/m], natural, 0 or more
 * @param specific mass-specific extinction at the same wavelength [m2/kg] (`specificExtinction`), more than 0
 * @returns smoke mass [kg/m3]; NaN in, NaN out
 * @throws UsageError for a negative extinction or a specific extinction that is not more than 0
 * @example extinctionToSoot(0.6255, 8700) // 71.9e-6
 */
export function extinctionToSoot(extinction: number, specific: number): number {
  refuseNegative('extinction', extinction, '1/m');
  refuseUnlessPositive('specific extinction', specific, 'm²/kg');
  return extinction / specific;
}
