import { type Beam, coveredShare } from '../../site/index.js';
import type { CleanDrift, CoveredStretch, CoveredTest } from '../covered/coveredTest.js';
import { coveredWords } from '../covered/coveredWords.js';
import type { Reach } from '../covered/reach.js';
import type { InputOut } from '../documents/inputOut.js';
import { instantOut, type NumberOut, numberOut } from '../documents/numbersOut.js';
import type { ThinTrace } from '../thinned.js';

/** A stretch of a covered test, as the JSON output has it. */
export interface CoveredStretchJson {
  readonly from: string | null;
  readonly to: string | null;
  readonly samples: number;
  /** [signalUnit] */
  readonly reading: number;
  /** Share of clean air. */
  readonly share: number;
  readonly spread: number;
}

/** A threshold under the residue of a covered test, as the JSON output has it. */
export interface ReachJson extends Omit<Reach, 'trueObscuration' | 'decibels' | 'trueDecibels' | 'timesTheSmoke'> {
  readonly trueObscuration: NumberOut;
  readonly decibels: NumberOut;
  readonly trueDecibels: NumberOut;
  readonly timesTheSmoke: NumberOut;
}

/** What a covered test says, ready for `JSON.stringify`. */
export interface CoveredJson {
  readonly format: 'beamkeep-covered/1';
  readonly beam: string;
  readonly before: CoveredStretchJson | null;
  readonly covered: CoveredStretchJson;
  readonly after: CoveredStretchJson | null;
  /** Covered over clean, with 95 % limits. */
  readonly ratio: { readonly value: number; readonly low: number; readonly high: number };
  /** Largest obscuration that the equipment can read, and the least it may be by the limits [%]. */
  readonly largestObscuration: { readonly value: number; readonly low: number };
  readonly alarm: ReachJson;
  readonly fault: ReachJson;
  readonly drift: CleanDrift | null;
  /** Covered over clean by the readings that the site file gives; null where it gives none. */
  readonly ratioOfSiteFile: number | null;
  readonly coveredSubtracted: boolean;
  readonly verdict: 'fit' | 'caution' | 'refuse';
  readonly sentences: readonly string[];
  readonly actions: readonly string[];
  /** For drawing: share of clean air. */
  readonly trace: ThinTrace;
  readonly assumed: readonly string[];
  readonly input: InputOut;
}

/** What of the reading stands beside the test. */
export type CoveredReading = Pick<CoveredJson, 'trace' | 'assumed' | 'input'>;

/**
 * What a covered test says, as JSON has it.
 *
 * @param test from `coveredTest`
 * @param beam the beam that was tested
 * @param reading what the log was
 */
export function coveredAnswer(test: CoveredTest, beam: Beam, { trace, assumed, input }: CoveredReading): CoveredJson {
  return {
    format: 'beamkeep-covered/1',
    beam: beam.id,
    before: stretchJson(test.before),
    covered: stretchJson(test.covered) as CoveredStretchJson,
    after: stretchJson(test.after),
    ratio: { value: test.ratio, low: test.ratioLow, high: test.ratioHigh },
    largestObscuration: { value: test.largestObscuration, low: test.largestObscurationLow },
    alarm: reachJson(test.alarm),
    fault: reachJson(test.fault),
    drift: test.drift ?? null,
    ratioOfSiteFile: beam.covered === undefined ? null : coveredShare(beam),
    coveredSubtracted: beam.coveredSubtracted,
    ...coveredWords(test, beam),
    trace,
    assumed,
    input,
  };
}

const stretchJson = (stretch: CoveredStretch | undefined): CoveredStretchJson | null =>
  stretch === undefined
    ? null
    : {
        from: instantOut(stretch.start),
        to: instantOut(stretch.end),
        samples: stretch.samples,
        reading: stretch.reading,
        share: stretch.share,
        spread: stretch.spread,
      };

const reachJson = (reach: Reach): ReachJson => ({
  ...reach,
  trueObscuration: numberOut(reach.trueObscuration),
  decibels: numberOut(reach.decibels),
  trueDecibels: numberOut(reach.trueDecibels),
  timesTheSmoke: numberOut(reach.timesTheSmoke),
});
