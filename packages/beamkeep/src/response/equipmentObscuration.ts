import { levelToPercent } from '../attenuation/index.js';
import { type Beam, coveredShare, linearReading } from '../site/index.js';

/**
 * Obscuration as the equipment sees it. Equipment that does not take the covered reading off still sees that light
 * when the beam is gone: of a true level L and a covered share r of the clean-air reading it sees L (1 - r) + r.
 *
 * @param beam of the site; its covered and clean-air readings may be in any unit
 * @param level true level, share of clean air; NaN in, NaN out
 * @returns obscuration that is compared with the thresholds [%]
 *
 * Where a covered reading is given in counts or millivolts and the clean-air reading is not, pass the beam with the
 * clean-air reading that the log told; without it the true obscuration is returned, which alarms no later.
 * @example equipmentObscuration({ ...beam, covered: 12, cleanAir: 100, coveredSubtracted: false }, 0) // 88
 */
export function equipmentObscuration(
  beam: Pick<Beam, 'signalUnit' | 'cleanAir' | 'covered' | 'coveredSubtracted'>,
  level: number,
): number {
  return equipmentView(beam)(level);
}

/** The same for many levels of one beam: a function from level to obscuration [%]. */
export function equipmentView(
  beam: Pick<Beam, 'signalUnit' | 'cleanAir' | 'covered' | 'coveredSubtracted'>,
): (level: number) => number {
  const share = beam.coveredSubtracted ? 0 : coveredShare(beam);
  return (level) => levelToPercent(level * (1 - share) + share);
}

/**
 * The largest obscuration that a beam's equipment can ever read, with nothing of the beam left [%]. A threshold beyond
 * it can never be reached.
 */
export const largestObscuration = (
  beam: Pick<Beam, 'signalUnit' | 'cleanAir' | 'covered' | 'coveredSubtracted'>,
): number => equipmentObscuration(beam, 0);

/**
 * From a reading of the log to the obscuration as the equipment sees it.
 *
 * @param beam of the site, with its clean-air reading
 * @returns a function from reading [signalUnit] to obscuration [%]; NaN in, NaN out, and NaN where no clean-air
 *   reading is known
 * @example readingObscuration({ signalUnit: 'counts', cleanAir: 2000, coveredSubtracted: false })(1300) // 35
 */
export function readingObscuration({
  signalUnit,
  cleanAir = Number.NaN,
  covered,
  coveredSubtracted,
}: Pick<Beam, 'signalUnit' | 'cleanAir' | 'covered' | 'coveredSubtracted'>): (reading: number) => number {
  const takenOff = coveredSubtracted && covered !== undefined ? linearReading(covered, signalUnit) : 0;
  const span = linearReading(cleanAir, signalUnit) - takenOff;
  return (reading) => levelToPercent((linearReading(reading, signalUnit) - takenOff) / span);
}
