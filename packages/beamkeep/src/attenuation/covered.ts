import { UsageError } from '../columns/index.js';
import { levelToPercent, percentToLevel } from './reading.js';
import { refuseUnlessPositive } from './refuse.js';

/*
 * With the reflector fully covered some light still comes back: from a window, from dust before the head, by a
 * neighbouring path. It did not come by the beam, so it is taken off both readings before they are compared:
 *
 *     level = (reading - covered) / (cleanAir - covered)
 *
 * Equipment that does not take it off reads less obscuration than there is, and can never read 100 %.
 * Source: derived from the sum of what comes by the beam and what does not.
 */

function span(cleanAir: number, covered: number): number {
  if (cleanAir > covered) return cleanAir - covered;
  throw new UsageError(`covered is ${covered}, not below cleanAir (${cleanAir}): read both again, in one unit`);
}

/**
 * Received level of a reading that is proportional to light.
 *
 * @param reading as logged [any unit proportional to received light]
 * @param cleanAir reading in clean air at commissioning [same unit]
 * @param covered reading with the far end fully covered [same unit], less than `cleanAir`
 * @returns share of clean air: 1 clean, 0 none, beyond both where the reading is; NaN in, NaN out
 * @throws UsageError where `covered` is not below `cleanAir`
 * @example readingToLevel(70, 100, 4) // 0.6875: 31.25 % obscuration, not 30 %
 */
export const readingToLevel = (reading: number, cleanAir: number, covered = 0): number =>
  (reading - covered) / span(cleanAir, covered);

/**
 * Reading of a received level: the way back from `readingToLevel`.
 *
 * @param level share of clean air
 * @param cleanAir reading in clean air at commissioning [any unit proportional to received light]
 * @param covered reading with the far end fully covered [same unit], less than `cleanAir`
 * @returns reading [same unit]; NaN in, NaN out
 * @throws UsageError where `covered` is not below `cleanAir`
 * @example levelToReading(0.6875, 100, 4) // 70
 */
export const levelToReading = (level: number, cleanAir: number, covered = 0): number =>
  covered + level * span(cleanAir, covered);

/**
 * Obscuration as equipment reads it that does not take the covered reading off.
 *
 * @param percent true obscuration [%]; 100 gives the largest obscuration the beam can ever read
 * @param cleanAir reading in clean air at commissioning [any unit proportional to received light], more than 0
 * @param covered reading with the far end fully covered [same unit], less than `cleanAir`
 * @returns apparent obscuration [%]; NaN in, NaN out
 * @throws UsageError where `covered` is not below `cleanAir`, or `cleanAir` is not more than 0
 * @example apparentObscuration(100, 100, 12) // 88
 */
export function apparentObscuration(percent: number, cleanAir: number, covered = 0): number {
  refuseUnlessPositive('cleanAir', cleanAir, '');
  return levelToPercent(levelToReading(percentToLevel(percent), cleanAir, covered) / cleanAir);
}
