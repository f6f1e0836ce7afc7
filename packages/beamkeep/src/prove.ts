import { UsageError } from './columns/index.js';
import {
  type ExpectedStep,
  evenRows,
  expectedSteps,
  instantOut,
  type NumberOut,
  numberOut,
  type Proof,
  type ProofSheet,
  panelList,
  proofOf,
  type StepResult,
  type StepWord,
  type ThinTrace,
  thinned,
} from './commissioning/index.js';
import {
  beamNamed,
  type InputReport,
  type LogSources,
  type ReadOptions,
  readReadings,
  type TextTable,
} from './log/index.js';
import { type DetectorState, readingObscuration, resetsOf } from './response/index.js';
import { bearsOnResponse, instantOf, quoted, type Site } from './site/index.js';

/** What a step of a proof must show, as the JSON output has it. */
export interface ExpectedJson {
  readonly do: StepWord;
  /** What to do, in words. */
  readonly words: string;
  /** What the step must take of the light [%]; null where any amount will do. */
  readonly obscuration: { readonly value: number; readonly low: number; readonly high: number } | null;
  /** The signal that must come; null where none may. */
  readonly signal: 'fire' | 'fault' | null;
  /** From the moment the threshold is reached to the signal [s]. */
  readonly window: { readonly from: number; readonly to: number } | null;
  readonly state: DetectorState;
  readonly holdSeconds: number;
  readonly doubts: readonly string[];
  readonly cautions: readonly string[];
}

/** A proof sheet with what each step must show: to be printed before the test. */
export interface ProofPlanJson {
  readonly format: 'beamkeep-proof-plan/1';
  readonly beam: string;
  readonly steps: readonly ExpectedJson[];
  /** The sheet itself, to be changed and given back. */
  readonly sheet: ProofSheet;
  readonly assumed: readonly string[];
}

/** How a step of a proof came out, as the JSON output has it. */
export interface StepJson {
  readonly expected: ExpectedJson;
  readonly verdict: StepResult['verdict'];
  readonly reasons: readonly string[];
  readonly shownBy: StepResult['shownBy'];
  readonly start: string | null;
  readonly end: string | null;
  /** [%] */
  readonly obscuration: NumberOut;
  /** [s] */
  readonly riseSeconds: NumberOut;
  readonly thresholdAt: string | null;
  readonly signalAt: string | null;
  readonly state: DetectorState | null;
}

/** How a proof came out, ready for `JSON.stringify`. */
export interface ProofJson {
  readonly format: 'beamkeep-proof/1';
  readonly beam: string;
  readonly verdict: Proof['verdict'];
  /** Obscuration in clean air before the test [%]. */
  readonly clean: number;
  readonly steps: readonly StepJson[];
  /** Losses that belong to no step: obscuration [%]. */
  readonly unexplained: readonly {
    readonly start: string | null;
    readonly end: string | null;
    readonly largest: number;
  }[];
  /** Whether the panel's own list was there to judge by. */
  readonly panelList: boolean;
  /** For drawing: obscuration as the equipment sees it [%]. */
  readonly trace: ThinTrace;
  readonly assumed: readonly string[];
  readonly input: InputReport;
}

/** What is known beside the log. */
export interface ProofQuestion {
  /** The panel's list, with columns time, beam, what. */
  readonly events?: TextTable | undefined;
  /** By how much the panel's clock runs ahead of the logger's [s]. */
  readonly clockOffsetSeconds?: number | undefined;
  /** From when to when, where the log is longer than the test [ms]. */
  readonly from?: number | undefined;
  readonly to?: number | undefined;
}

/**
 * What each step of a proof sheet must show on this site, before anything is done.
 *
 * @throws UsageError for a beam that the site does not have, or a step that lacks what it needs
 */
export function proofPlan(sheet: ProofSheet, site: Site): ProofPlanJson {
  const beam = beamNamed(site, sheet.beam);
  return {
    format: 'beamkeep-proof-plan/1',
    beam: beam.id,
    steps: expectedSteps(sheet, beam).map(expectedJson),
    sheet,
    assumed: beam.assumed.filter(bearsOnResponse),
  };
}

/**
 * Finds each step of a proof sheet in a logged test, and says pass or fail with reasons.
 *
 * @param sources the log of the test
 * @param site the site: settings of the beam, visits with work "reset"
 * @param sheet the steps, in order
 * @param question the panel's list and its clock; a part of the log
 * @throws UsageError where log, sheet or list cannot be used
 * @example (await prove(logOfText(csv), site, usualSteps(beam))).verdict // pass
 */
export async function prove(
  sources: LogSources,
  site: Site,
  sheet: ProofSheet,
  { events, clockOffsetSeconds, from, to }: ProofQuestion = {},
  options: ReadOptions = {},
): Promise<ProofJson> {
  const times = sheet.steps.map((step, row) => writtenTime(step.time, row, site.timeZone));
  const panel = events && panelList(events, site, sheet.beam, clockOffsetSeconds);
  const log = await readReadings(sources, site, { beam: sheet.beam, from, to }, options);
  const { beam, time, end, intervalSeconds } = log;
  const logged = { time, obscuration: log.readings.map(readingObscuration(beam)) };
  const even = site.sampling === 'on-change' ? evenRows(time, logged.obscuration, end) : undefined;
  const seen = even ? { time: even.time, obscuration: even.values } : logged;
  const told = [
    ...resetsOf(site.visits, beam.id),
    ...(panel ?? []).flatMap((e) => (e.what === 'reset' ? [e.time] : [])),
  ];
  const proof = proofOf(sheet, beam, {
    logged,
    even: seen,
    sampling: site.sampling,
    intervalSeconds,
    end,
    times,
    resets: told.sort((a, b) => a - b),
    ...(panel && { panel }),
  });
  return {
    format: 'beamkeep-proof/1',
    beam: beam.id,
    verdict: proof.verdict,
    clean: proof.clean,
    steps: proof.steps.map(stepJson),
    unexplained: proof.unexplained.map((stay) => ({
      start: instantOut(stay.start),
      end: instantOut(stay.end),
      largest: stay.largest,
    })),
    panelList: panel !== undefined,
    trace: thinned(seen.time, seen.obscuration, 2),
    assumed: [...beam.assumed.filter(bearsOnResponse), ...log.assumed],
    input: log.input,
  };
}

function writtenTime(text: string | undefined, row: number, timeZone: string): number {
  if (text === undefined) return Number.NaN;
  const read = instantOf(text, timeZone);
  if ('instant' in read) return read.instant;
  throw new UsageError(`steps[${row}].time is ${quoted(text)}: write date and time as in 2027-03-02T09:00:00Z`);
}

const expectedJson = ({ step, obscuration, signal, window, ...rest }: ExpectedStep): ExpectedJson => ({
  do: step.do,
  words: rest.words,
  obscuration: obscuration ?? null,
  signal: signal ?? null,
  window: window ?? null,
  state: rest.state,
  holdSeconds: rest.holdSeconds,
  doubts: rest.doubts,
  cautions: rest.cautions,
});

const stepJson = (step: StepResult): StepJson => ({
  expected: expectedJson(step.expected),
  verdict: step.verdict,
  reasons: step.reasons,
  shownBy: step.shownBy,
  start: instantOut(step.start),
  end: instantOut(step.end),
  obscuration: numberOut(step.obscuration),
  riseSeconds: numberOut(step.riseSeconds),
  thresholdAt: instantOut(step.since),
  signalAt: instantOut(step.signalAt),
  state: step.state ?? null,
});
