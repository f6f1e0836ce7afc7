import { largestObscuration } from 'beamkeep/response';
import type { Beam } from 'beamkeep/site';

/**
 * True level at which the equipment of a beam takes the loss for smoke, share of clean air.
 *
 * What the equipment sees grows evenly with the true loss, up to the largest obscuration that it can read. Where the
 * threshold lies beyond that, it never alarms, and the result is below 0.
 */
export const alarmLevel = (beam: Beam): number => 1 - beam.alarmThreshold / largestObscuration(beam);
