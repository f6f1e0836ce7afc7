import { refuseNegative, refuseUnlessLength } from './refuse.js';

/** A stretch of the beam in which the smoke is even. */
export interface EvenStretch {
  /** Extinction coefficient at the beam's wavelength [1/m], 0 or more. */
  readonly extinctionPerMetre: number;
  /** Length along the beam [m], 0 or more and finite. */
  readonly lengthMetres: number;
}

/**
 * Loss of a beam through smoke that varies along it: losses of joined stretches add.
 *
 * @param stretches parts of the beam from one end to the other
 * @param crossings how often the light passes them: 2 for a reflective beam (`crossings`)
 * @returns loss [dB], 0 or more; NaN where an extinction is NaN
 * @throws UsageError for a negative extinction, or a length that is negative, endless or missing
 *
 * Source: FDS Technical Reference Guide, "Fire Detection Devices": optical depth summed along the path, alarm on the
 * total obscuration.
 * @example lossAlong([{ extinctionPerMetre: 0.2, lengthMetres: 4 }, { extinctionPerMetre: 0.01, lengthMetres: 6 }], 1)
 */
export function lossAlong(stretches: readonly EvenStretch[], crossings: 1 | 2): number {
  let depth = 0;
  for (const { extinctionPerMetre, lengthMetres } of stretches) {
    refuseNegative('extinction', extinctionPerMetre, '1/m');
    refuseUnlessLength('length', lengthMetres);
    if (lengthMetres > 0) depth += extinctionPerMetre * lengthMetres;
  }
  return (10 / Math.LN10) * crossings * depth;
}
