import { type Span, UsageError } from '../../columns/index.js';
import { cleanDrift } from '../../numbers/index.js';
import { largestObscuration } from '../../response/index.js';
import { type Beam, readingOf } from '../../site/index.js';
import { studentQuantile } from '../../statistics/index.js';
import { type MeanReading, meanReading } from './meanReading.js';
import { type Reach, reachOf } from './reach.js';
import { type TestReadings, testStretches } from './testStretches.js';

/*
 * The covered test: cover the whole reflector (or the receiver) in clean air, and see what still comes back.
 *
 *     100 %  ______          ______   clean before, clean after
 *                  |        |
 *       4 %        |________|         covered: this light did not come by the beam
 *
 * What comes back without the beam can never be taken away by smoke. Equipment that does not subtract it can read no
 * more than 100 (1 - ratio) %, and a threshold of A % needs A / (1 - ratio) % of true smoke.
 */

/** One stretch of a covered test. */
export interface CoveredStretch extends Omit<MeanReading, 'mean' | 'spread' | 'standardError' | 'degreesOfFreedom'> {
  /** First and last sample that were used [ms]. */
  readonly start: number;
  readonly end: number;
  /** Mean reading [signalUnit of the beam]. */
  readonly reading: number;
  /** Mean received power, clean air before or after the cover being 1. */
  readonly share: number;
  /** Standard deviation of single samples, same scale. */
  readonly spread: number;
}

/** How far the clean reading went from before the cover to after it. */
export interface CleanDrift {
  /** Change of the clean reading, of its mean [%]: above 0 it rose. */
  readonly percent: number;
  /** 95 % limits [%]. */
  readonly low: number;
  readonly high: number;
  /** Whether it is both beyond doubt and beyond what a clean reading may wander. */
  readonly tells: boolean;
}

/** What a covered test says of a beam. */
export interface CoveredTest {
  readonly before: CoveredStretch | undefined;
  readonly covered: CoveredStretch;
  readonly after: CoveredStretch | undefined;
  /** Received power in clean air at the time of the cover [unit of the readings' power]. */
  readonly clean: number;
  /** Covered over clean, received power; 95 % limits. */
  readonly ratio: number;
  readonly ratioLow: number;
  readonly ratioHigh: number;
  /** Largest obscuration that the equipment of this beam can ever read [%], and the least it may be by the limits. */
  readonly largestObscuration: number;
  readonly largestObscurationLow: number;
  /** What the alarm and the fault threshold then mean. */
  readonly alarm: Reach;
  readonly fault: Reach;
  /** From before to after; undefined where one of them is missing. */
  readonly drift: CleanDrift | undefined;
  /** Smallest step that the readings can show, as a share of clean air. */
  readonly step: number;
}

/**
 * What a logged covered test says of a beam.
 *
 * @param readings received power of the beam [any unit proportional to it], at least three samples a stretch
 * @param beam of the site: its thresholds, and whether its equipment takes the covered reading off
 * @returns stretches, ratio, largest obscuration, thresholds, drift
 * @throws UsageError where no covered stretch between clean ones is to be found; it says what to do
 *
 * The clean reading at the time of the cover lies between those before and after. Limits: samples that resemble their
 * neighbours, rounding, and drift are all counted in.
 */
export function coveredTest(
  readings: TestReadings,
  beam: Pick<Beam, 'id' | 'signalUnit' | 'coveredSubtracted' | 'alarmThreshold' | 'faultThreshold'>,
): CoveredTest {
  const found = testStretches(readings);
  if ('refusal' in found) throw new UsageError(`beam ${beam.id}: ${found.refusal}`);
  const { step = 0 } = readings;
  const told = (span: Span | undefined) => span && { span, ...meanReading(readings.power, span, step) };
  const [before, covered, after] = [told(found.before), told(found.covered), told(found.after)];
  const known = [before, after].filter((stretch) => stretch !== undefined);
  if (covered === undefined || known.length === 0)
    throw new UsageError(
      `beam ${beam.id}: there is no clean stretch before or after the covered one: begin and end the test in clean air`,
    );

  const clean = known.reduce((sum, stretch) => sum + stretch.mean, 0) / known.length;
  const cleanError = Math.hypot(...known.map(({ standardError }) => standardError)) / known.length;
  // Somewhere between before and after: evenly likely, so its spread is the difference over the root of 12.
  const wander = before && after ? Math.abs(after.mean - before.mean) / Math.sqrt(12) : 0;
  const ratio = covered.mean / clean;
  const error = Math.hypot(covered.standardError, ratio * cleanError, ratio * wander) / clean;
  const freedom = Math.min(covered.degreesOfFreedom, ...known.map(({ degreesOfFreedom }) => degreesOfFreedom));
  const reach = studentQuantile(0.975, freedom) * error;
  const [ratioLow, ratioHigh] = [ratio - reach, ratio + reach];
  // Noise about nothing can measure a residue below 0: more than all of the light cannot be read.
  const largest = (share: number) =>
    largestObscuration({
      signalUnit: 'counts',
      cleanAir: 1,
      covered: Math.max(share, 0),
      coveredSubtracted: beam.coveredSubtracted,
    });

  const stretch = (part: (MeanReading & { span: Span }) | undefined): CoveredStretch | undefined =>
    part && {
      start: readings.time[part.span.from] as number,
      end: readings.time[part.span.to - 1] as number,
      samples: part.samples,
      reading: readingOf(part.mean, beam.signalUnit),
      share: part.mean / clean,
      spread: part.spread / clean,
    };
  return {
    before: stretch(before),
    covered: stretch(covered) as CoveredStretch,
    after: stretch(after),
    clean,
    ratio,
    ratioLow,
    ratioHigh,
    largestObscuration: largest(ratio),
    largestObscurationLow: largest(ratioHigh),
    alarm: reachOf(beam.alarmThreshold, 'smoke', largest(ratio), largest(ratioHigh), largest(ratioLow)),
    fault: reachOf(beam.faultThreshold, 'block', largest(ratio), largest(ratioHigh), largest(ratioLow)),
    drift: before && after && driftOf(before, after, clean),
    step: step / clean,
  };
}

function driftOf(before: MeanReading, after: MeanReading, clean: number): CleanDrift {
  const percent = (100 * (after.mean - before.mean)) / clean;
  const error = (100 * Math.hypot(before.standardError, after.standardError)) / clean;
  const reach = studentQuantile(0.975, Math.min(before.degreesOfFreedom, after.degreesOfFreedom)) * error;
  const [low, high] = [percent - reach, percent + reach];
  return { percent, low, high, tells: (low > 0 || high < 0) && Math.abs(percent) >= cleanDrift.value };
}
