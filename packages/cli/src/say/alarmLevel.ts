import { type Beam, coveredShare } from 'beamkeep/site';

/**
 * True level at which the equipment of a beam takes the loss for smoke, share of clean air.
 *
 * Equipment that does not take the covered reading off sees less obscuration than there is: it needs a deeper loss,
 * and beyond the covered reading it never alarms (then the result is below 0).
 */
export function alarmLevel(beam: Beam): number {
  const seen = 1 - beam.alarmThreshold / 100;
  const covered = beam.coveredSubtracted ? 0 : coveredShare(beam);
  return (seen - covered) / (1 - covered);
}
