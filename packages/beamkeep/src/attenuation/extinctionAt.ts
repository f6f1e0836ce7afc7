import { wavelengthPower } from '../numbers/index.js';
import { refuseNegative, refuseUnlessPositive } from './refuse.js';

/**
 * Extinction of the same smoke in light of another wavelength.
 *
 * @param extinction extinction coefficient [1/m], or specific extinction [m2/kg], 0 or more
 * @param fromNanometres wavelength at which it holds [nm], more than 0
 * @param toNanometres wavelength wanted [nm], more than 0
 * @returns extinction in the unit given; NaN in, NaN out
 * @throws UsageError for a negative extinction or a wavelength that is not more than 0
 *
 * About as 1/wavelength, for soot between 450 and 1000 nm; pale smouldering smoke may fall faster. An 880 nm beam sees
 * 0.72 of what handbooks give at 633 nm: leaving that out errs on the unsafe side.
 * Source: Widmann, Combustion Science and Technology, 2003 (see `wavelengthPower`).
 * @example extinctionAt(8700, 633, 880) // 6258
 */
export function extinctionAt(extinction: number, fromNanometres: number, toNanometres: number): number {
  refuseNegative('extinction', extinction, '');
  refuseUnlessPositive('wavelength', fromNanometres, 'nm');
  refuseUnlessPositive('wavelength', toNanometres, 'nm');
  return extinction * (fromNanometres / toNanometres) ** wavelengthPower.value;
}
