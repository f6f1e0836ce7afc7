import type { DetectorState } from '../../response/index.js';
import type { InputOut } from '../documents/inputOut.js';
import { instantOut, type NumberOut, numberOut } from '../documents/numbersOut.js';
import type { ExpectedStep } from '../proof/expected.js';
import type { Proof } from '../proof/proofOf.js';
import type { ProofSheet, StepWord } from '../proof/step.js';
import type { StepResult } from '../proof/stepResult.js';
import type { ThinTrace } from '../thinned.js';

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
  readonly input: InputOut;
}

/** What of the reading stands beside a proof. */
export type ProofReading = Pick<ProofJson, 'panelList' | 'trace' | 'assumed' | 'input'>;

/**
 * How a proof came out, as JSON has it.
 *
 * @param beam its id
 * @param proof from `proofOf`
 * @param reading what the log was
 */
export const proofAnswer = (
  beam: string,
  proof: Proof,
  { panelList, trace, assumed, input }: ProofReading,
): ProofJson => ({
  format: 'beamkeep-proof/1',
  beam,
  verdict: proof.verdict,
  clean: proof.clean,
  steps: proof.steps.map(stepJson),
  unexplained: proof.unexplained.map((stay) => ({
    start: instantOut(stay.start),
    end: instantOut(stay.end),
    largest: stay.largest,
  })),
  panelList,
  trace,
  assumed,
  input,
});

/** A proof sheet with what each step must show, as JSON has it. */
export const planAnswer = (
  sheet: ProofSheet,
  steps: readonly ExpectedStep[],
  assumed: readonly string[],
): ProofPlanJson => ({
  format: 'beamkeep-proof-plan/1',
  beam: sheet.beam,
  steps: steps.map(expectedJson),
  sheet,
  assumed,
});

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
