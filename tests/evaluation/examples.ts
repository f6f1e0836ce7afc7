import { type CauseWord, causeWords } from '../../packages/beamkeep/src/diagnosis/finding.js';
import { type ComparedBeam, compare } from './compare.js';
import type { StatedFinding, StatedForecast } from './diagnosisJson.js';
import type { Interval } from './intervals.js';
import type { BeamTruth, LabelledEvent, Truth } from './truth.js';

/*
 * Tiny hand-made pairs of truth and diagnosis. Times are hours into a log of 2027 that is sampled every five minutes.
 */

export const hours = (hour: number): number => Date.UTC(2027, 0, 1) + hour * 3_600_000;

/** A labelled event from one hour to another. */
export const labelled = (
  cause: CauseWord,
  from: number,
  to = from,
  more: Partial<LabelledEvent> = {},
): LabelledEvent => ({
  cause,
  start: hours(from),
  end: hours(to),
  accepts: [],
  ...more,
});

/** A finding from one hour to another; a plan-it statement unless told otherwise. */
export const said = (cause: CauseWord, from: number, to = from, more: Partial<StatedFinding> = {}): StatedFinding => ({
  cause,
  start: new Date(hours(from)).toISOString(),
  end: new Date(hours(to)).toISOString(),
  confidence: 0.9,
  severity: 'watch',
  ...more,
});

/** One beam watched for 60 days, with nothing at work unless told. */
export const watched = (truth: Partial<BeamTruth>): BeamTruth => ({
  id: 'B1',
  from: hours(0),
  to: hours(24 * 60),
  causes: [],
  traces: [],
  couldBeSmoke: [],
  ...truth,
});

/** A log of one beam, compared. `fires`: when its loss called for fire. */
export function compared(
  beam: Partial<BeamTruth>,
  findings: readonly StatedFinding[],
  forecast: StatedForecast | null = null,
  fires: readonly Interval[] = [],
): ComparedBeam {
  const truth: Truth = { format: 'beamkeep-truth/1', kind: 'mixed', samplingSeconds: 300, beams: [watched(beam)] };
  const [first] = compare(
    'north-hall',
    truth,
    { beams: [{ id: 'B1', findings, forecast }] },
    new Map([['B1', fires]]),
    causeWords,
  );
  if (!first) throw new Error('no beam came back');
  return first;
}
