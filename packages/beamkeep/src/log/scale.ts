import { type Beam, linearReading } from '../site/index.js';
import { cleanAirFound, cleanAirTold } from './cleanAir.js';

/** Where a beam's readings lie between nothing and clean air, in a scale proportional to received power. */
export interface Scale {
  /** Reading in clean air. */
  readonly clean: number;
  /** What does not come by the beam. */
  readonly covered: number;
  /** What had to be assumed, in words. */
  readonly assumed: readonly string[];
}

/** The scale of a beam whose clean-air reading is known. */
function knownScale(beam: Beam, cleanAir: number): Scale {
  return { clean: linearReading(cleanAir, beam.signalUnit), covered: coveredPower(beam), assumed: [] };
}

/** The covered reading, proportional to received power; 0 where there is none. */
export const coveredPower = ({ covered, signalUnit }: Beam): number =>
  covered === undefined ? 0 : linearReading(covered, signalUnit);

/**
 * The scale of a beam, its clean-air reading taken from the log where neither the site nor the unit gives it (counts
 * and millivolts).
 *
 * @param time rising instants of the log's beginning [ms]
 * @param linear its readings there, proportional to received power, without NaN
 */
export function scaleOf(beam: Beam, time: Float64Array, linear: Float64Array): Scale {
  if (beam.cleanAir !== undefined) return knownScale(beam, beam.cleanAir);
  const found = cleanAirFound(time, linear, coveredPower(beam));
  if (found === undefined) return knownScale(beam, 1);
  return { ...knownScale(beam, found.reading), assumed: [cleanAirTold(found, beam)] };
}

/**
 * From a reading to the level of a beam.
 *
 * @param beam of the site
 * @param cleanAir its reading in clean air [signalUnit]; the site's own, or one found in the log
 * @returns a function from a reading [signalUnit] to the share of clean air: 1 clean, 0 none; NaN in, NaN out
 * @example toLevel({ ...beam, signalUnit: 'counts', covered: 12 }, 2012)(1012) // 0.5
 */
export function toLevel(beam: Beam, cleanAir: number): (reading: number) => number {
  const { clean, covered } = knownScale(beam, cleanAir);
  return (reading) => (linearReading(reading, beam.signalUnit) - covered) / (clean - covered);
}

/** Full scale of readings that lie about 0 on a clean beam: all light in per cent, nine tenths of it in decibels; else 0. Own choice. */
export const fullScaleOf = ({ signalUnit }: Beam): number =>
  signalUnit === 'decibels' ? 10 : signalUnit === 'obscuration' ? 100 : 0;

/**
 * A step of the logged scale near clean air, proportional to received power. Steps in decibels grow with the level.
 *
 * @param step [signalUnit]
 */
export function linearStep(step: number, { signalUnit }: Beam, clean: number): number {
  if (signalUnit === 'decibels') return clean * (10 ** (step / 10) - 1);
  return signalUnit === 'obscuration' ? step / 100 : step;
}
