import {
  type CleanDrift,
  type CoveredStretch,
  coveredTest,
  coveredWords,
  evenRows,
  instantOut,
  type NumberOut,
  numberOut,
  type Reach,
  type ThinTrace,
  thinned,
} from './commissioning/index.js';
import {
  type InputReport,
  type LogSources,
  type ReadingsQuestion,
  type ReadOptions,
  readReadings,
} from './log/index.js';
import { coveredShare, type Site } from './site/index.js';

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
  readonly input: InputReport;
}

/**
 * Reads a logged covered test and tells what still comes back without the beam, and what that does to the thresholds.
 *
 * @param sources the log of the test
 * @param site the site
 * @param question which beam; from when to when, where the log is longer than the test
 * @returns stretches, ratio, largest obscuration, thresholds and what to do
 * @throws UsageError where the log cannot be used, or shows no covered stretch beside clean air
 * @example (await covered(logOfText(csv), site, { beam: 'B1' })).verdict // fit
 */
export async function covered(
  sources: LogSources,
  site: Site,
  question: ReadingsQuestion = {},
  options: ReadOptions = {},
): Promise<CoveredJson> {
  const { beam, time, power, powerStep, end, assumed, input } = await readReadings(sources, site, question, options);
  const even = site.sampling === 'on-change' ? evenRows(time, power, end) : { time, values: power };
  const test = coveredTest({ time: even.time, power: even.values, step: powerStep }, beam);
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
    trace: thinned(even.time, even.values, 4, test.clean),
    assumed: [...beam.assumed.filter((words) => /Threshold/.test(words)), ...assumed],
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
