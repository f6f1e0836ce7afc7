import type { RunnerUpJson } from './diagnose.js';
import { type Finding, runnerUp } from './diagnosis/index.js';

/**
 * What comes second for a finding, and how to part the two: for the question `explain` of `diagnose`.
 *
 * @param finding the first
 * @param findings of the same beam
 * @returns nothing where nothing looks like it
 * @example await diagnose(logOfText(csv, 'log.csv'), site, { explain: secondCause })
 */
export function secondCause(finding: Finding, findings: readonly Finding[]): { readonly runnerUp?: RunnerUpJson } {
  const second = runnerUp(finding, findings);
  if (second === undefined) return {};
  const { pair, alike, test, outcomes } = second.parting;
  const [first, other] = pair;
  const told = second.finding;
  return {
    runnerUp: {
      cause: first === finding.cause ? other : first,
      finding:
        told === undefined
          ? null
          : { start: new Date(told.start).toISOString(), confidence: told.confidence, sameTime: second.meets },
      alike,
      test,
      outcomes: [
        { cause: first, looks: outcomes[0] },
        { cause: other, looks: outcomes[1] },
      ],
    },
  };
}
