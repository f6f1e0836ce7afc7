import type { ExpectedJson, ProofJson } from '../answers/proofAnswer.js';
import { figure } from '../words/figure.js';

/**
 * What a step of a proof must show, in one sentence: for the sheet that is carried on the lift.
 *
 * @param expected a step of `proofPlan` or of a proof
 * @example mustShow(plan.steps[2]) // Must show: fire 10 to 15 s after the threshold is reached; hold it 20 s.
 */
export function mustShow({ obscuration, signal, window, state, holdSeconds }: ExpectedJson): string {
  const parts = [
    ...(obscuration
      ? [`takes ${figure(obscuration.value)} % (${figure(obscuration.low)} to ${figure(obscuration.high)})`]
      : []),
    signal === null
      ? `no new signal; state ${state}`
      : `${signal}${window ? ` ${figure(window.from)} to ${figure(window.to)} s after the threshold is reached` : ''}`,
    ...(holdSeconds > 0 ? [`hold it ${figure(holdSeconds)} s`] : []),
  ];
  return `Must show: ${parts.join('; ')}.`;
}

/** What a verdict over a whole proof means. */
export const proofVerdictWords: Readonly<Record<ProofJson['verdict'], string>> = {
  pass: 'pass',
  open: 'nothing failed; some steps are not shown',
  fail: 'fail',
};
