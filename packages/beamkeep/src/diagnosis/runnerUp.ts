import type { CauseWord } from './finding.js';
import { type Parting, partingOf, partings, partingsWith } from './partings.js';

/** What the search for a runner-up needs to know of a finding. */
export interface Rival {
  readonly cause: CauseWord;
  /** First and last sample [ms]. */
  readonly start: number;
  readonly end: number;
  readonly confidence: number;
  /** Of a recurring cause: first and last sample of each time it came, rising [ms]. */
  readonly episodes?: readonly (readonly [number, number])[];
}

/** The cause that comes second for a finding, and how to part the two. */
export interface RunnerUp<T extends Rival> {
  /** The finding of that cause: at the same time, or else at another time on the same beam; none where it is only alike. */
  readonly finding?: T;
  /** Whether it lies at the same time. */
  readonly meets: boolean;
  readonly parting: Parting;
}

/**
 * The cause that comes second for a finding: one that looks alike and was found at the same time, less sure; else one
 * that looks alike and was found on the same beam at another time; else the one that it is most often mistaken for.
 * Smoke at the same time comes second whatever its confidence, and so does what stands beside smoke.
 *
 * @param finding the first
 * @param findings of the same beam, the first among them or not
 * @returns undefined where nothing looks like it
 */
export function runnerUp<T extends Rival>(finding: Rival, findings: readonly T[]): RunnerUp<T> | undefined {
  const alike = findings
    .flatMap((other) => {
      const parting = partingOf(finding.cause, other.cause);
      return parting === undefined ? [] : [{ finding: other, meets: meet(finding, other), parting }];
    })
    .filter(({ finding: { cause, confidence }, meets }) => {
      const smoke = cause === 'smoke-like' || finding.cause === 'smoke-like';
      return !meets || smoke || confidence < finding.confidence;
    })
    .sort((a, b) => rank(b) - rank(a));
  const [usual] = partingsWith(finding.cause);
  return alike[0] ?? (usual === undefined ? undefined : { meets: false, parting: usual });
}

/**
 * At the same time: smoke before all, then the surer. At other times: what is likely before what is only possible, then
 * the pair that is more usual.
 */
const rank = ({ finding: { cause, confidence }, meets, parting }: Required<RunnerUp<Rival>>): number =>
  meets
    ? 4 + (cause === 'smoke-like' ? 2 : 0) + confidence
    : (confidence >= 0.5 || cause === 'smoke-like' ? 2 : 0) + 1 - partings.indexOf(parting) / partings.length;

const times = ({ episodes, start, end }: Rival): readonly (readonly [number, number])[] => episodes ?? [[start, end]];

/** Whether two findings have a moment in common. */
function meet(one: Rival, other: Rival): boolean {
  const [a, b] = [times(one), times(other)];
  for (let i = 0, j = 0; i < a.length && j < b.length; ) {
    const [from, to] = a[i] as readonly [number, number];
    const [otherFrom, otherTo] = b[j] as readonly [number, number];
    if (from <= otherTo && otherFrom <= to) return true;
    if (to < otherTo) i++;
    else j++;
  }
  return false;
}
