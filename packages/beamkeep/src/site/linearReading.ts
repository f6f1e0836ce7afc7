import type { Beam, SignalUnit } from './site.js';

/**
 * A reading put into a scale that is proportional to received optical power. The scale is the unit's own: percent,
 * counts and millivolts stay as they are, obscuration and decibels become a share of the power at 0.
 *
 * @param reading reading [signalUnit]; NaN stays NaN
 * @param unit the beam's signalUnit
 * @example linearReading(-21.99, 'decibels') // 0.006324
 * @example linearReading(99.6, 'obscuration') // 0.004
 */
export function linearReading(reading: number, unit: SignalUnit): number {
  if (unit === 'obscuration') return (100 - reading) / 100;
  if (unit === 'decibels') return 10 ** (reading / 10);
  return reading;
}

/** Inverse of `linearReading`: the reading [signalUnit] that stands for a received power. */
export function readingOf(power: number, unit: SignalUnit): number {
  if (unit === 'obscuration') return 100 - 100 * power;
  if (unit === 'decibels') return 10 * Math.log10(power);
  return power;
}

/**
 * Share of the clean-air reading that remains when the far end is covered: light that does not come by the beam, in
 * received power. 0 where no covered reading is given, or where the clean-air reading is not known.
 *
 * @param beam of the site
 * @param cleanAir reading in clean air [signalUnit]; the site's own, or one found in the log
 * @example coveredShare({ signalUnit: 'decibels', cleanAir: 0, covered: -20 }) // 0.01
 */
export function coveredShare(
  { signalUnit, covered, cleanAir: cleanAirOfSite }: Pick<Beam, 'signalUnit' | 'covered' | 'cleanAir'>,
  cleanAir = cleanAirOfSite,
): number {
  if (covered === undefined || cleanAir === undefined) return 0;
  return linearReading(covered, signalUnit) / linearReading(cleanAir, signalUnit);
}
