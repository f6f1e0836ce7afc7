import {
  converted,
  opticalPath,
  type SmokeEquivalent,
  smokeEquivalent,
  type Unit,
  units,
} from '../../attenuation/index.js';
import type { Beam } from '../../site/index.js';

/** One threshold, said in every way that the trade says it. */
export interface ThresholdInUnits {
  /** As set: obscuration of the whole path [%]. */
  readonly percent: number;
  /** Length of smoke that the light crosses [m]: twice the separation of a reflective beam. */
  readonly pathMetres: number;
  /** The amount in each unit; Infinity for a threshold of 100 % in units without end. */
  readonly units: Readonly<Record<Unit, number>>;
  /** What even smoke of that loss would be: extinction at the beam's wavelength and at 633 nm, visibility, mass. */
  readonly smoke: SmokeEquivalent;
}

/**
 * A threshold in every unit, over the true optical path and at the beam's wavelength.
 *
 * @param percent obscuration of the whole path [%], above 0 and at most 100
 * @param beam layout, separation [m], wavelength [nm]
 * @throws UsageError for what is no obscuration
 * @example everyUnit(35, beam).units['decibels-per-metre'] // 0.01509 over 124 m
 */
export function everyUnit(
  percent: number,
  { layout, separation, wavelength }: Pick<Beam, 'layout' | 'separation' | 'wavelength'>,
): ThresholdInUnits {
  const pathMetres = opticalPath(layout, separation);
  const amounts = units.map((unit) => [unit, converted(percent, 'percent', unit, pathMetres)] as const);
  return {
    percent,
    pathMetres,
    units: Object.fromEntries(amounts) as Record<Unit, number>,
    smoke: smokeEquivalent(converted(percent, 'percent', 'decibels'), pathMetres, wavelength),
  };
}
