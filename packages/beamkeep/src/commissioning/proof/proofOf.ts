import { UsageError } from '../../columns/index.js';
import { beamResponder, type Change } from '../../response/index.js';
import type { Beam, Sampling } from '../../site/index.js';
import { median } from '../../statistics/index.js';
import { type Excursion, excursions, type TestObscuration } from './excursions.js';
import { expectedSteps, takesLight } from './expected.js';
import { judged } from './judged.js';
import { resetsTaken } from './resetsTaken.js';
import type { ProofSheet } from './step.js';
import { steppedThrough } from './steppedThrough.js';
import type { PanelEvent, StepResult } from './stepResult.js';

/** A logged proof, and what is known beside the log. */
export interface ProofLog {
  /** As logged: what the equipment saw, in order of time. */
  readonly logged: TestObscuration;
  /** The same for the eye: of a log on change a row a second; else the very same. */
  readonly even: TestObscuration;
  readonly sampling: Sampling;
  /** Usual interval between samples [s]. */
  readonly intervalSeconds: number;
  /** Last instant of the log [ms]. */
  readonly end: number;
  /** When each step was done, as written down [ms]; NaN where nothing was. */
  readonly times: readonly number[];
  /** Resets that the site file or the panel's list tell [ms], rising. */
  readonly resets: readonly number[];
  /** The panel's list of this beam; left out: there is none. */
  readonly panel?: readonly PanelEvent[];
}

/** How a proof came out. */
export interface Proof {
  /** `fail` where a step failed; `open` where none did and a step is not shown; else `pass`. */
  readonly verdict: 'pass' | 'open' | 'fail';
  readonly steps: readonly StepResult[];
  /** Obscuration in clean air, as the equipment saw it [%]. */
  readonly clean: number;
  /** Stays away from clean air that belong to no step: first samples [ms] and largest obscuration [%]. */
  readonly unexplained: readonly Pick<Excursion, 'start' | 'end' | 'largest'>[];
  /** Changes of state by the settings of the site file. */
  readonly changes: readonly Change[];
}

/**
 * Finds each step of a proof sheet in a logged test, and says pass or fail.
 *
 * @param sheet the steps, in order
 * @param beam the beam that was tested
 * @param log what was logged, and what is known beside it
 * @throws UsageError for a log without samples, or a step that lacks what it needs
 */
export function proofOf(sheet: ProofSheet, beam: Beam, log: ProofLog): Proof {
  const { even, logged, times, panel } = log;
  if (even.time.length < 3)
    throw new UsageError(`beam ${beam.id}: the log holds ${even.time.length} samples: a proof needs the logged test`);
  const expected = expectedSteps(sheet, beam);
  const found = excursions(even, beam, log.intervalSeconds);
  const steps = steppedThrough(expected, found, beam, times);
  const resets = resetsTaken(expected, steps, log.resets, times, log.end);
  const changes = changesOf(logged, beam, log, [...log.resets, ...resets.flatMap((reset) => reset?.at ?? [])]);
  const starts = expected.map(({ step }, row) => (takesLight(step) ? steps[row]?.start : resets[row]?.at));
  /** A step without a start of its own begins when it was written down, or when the one before it was over. */
  const begunBy = (row: number): number => {
    const written = times[row] as number;
    if (!Number.isNaN(written)) return written;
    const ends = [...steps.slice(0, row).map((stay) => stay?.end), ...resets.slice(0, row).map((reset) => reset?.at)];
    return Math.max(
      even.time[0] as number,
      ...ends.filter((end) => end !== undefined).filter((end) => !Number.isNaN(end)),
    );
  };
  const results = expected.map((step, row) => {
    const excursion = steps[row];
    const from = starts[row] ?? begunBy(row);
    const to = starts.slice(row + 1).find((start) => start !== undefined) ?? log.end;
    const reset = resets[row];
    return judged(
      {
        expected: step,
        excursion,
        from,
        to,
        resetAt: reset?.told ? reset.at : undefined,
        returned: step.step.do === 'uncover' && excursion ? returned(even, excursion, found.list, to) : undefined,
      },
      changes,
      found,
      beam,
      panel,
    );
  });
  const verdicts = results.map(({ verdict }) => verdict);
  return {
    verdict: verdicts.includes('fail') ? 'fail' : verdicts.includes('not shown') ? 'open' : 'pass',
    steps: results,
    clean: found.clean,
    unexplained: found.list.filter((stay) => !steps.includes(stay)),
    changes,
  };
}

/** What equipment with the settings of the beam signals over the log. */
function changesOf(
  { time, obscuration }: TestObscuration,
  beam: Beam,
  { sampling, intervalSeconds, end }: ProofLog,
  resets: readonly number[],
): Change[] {
  const changes: Change[] = [];
  const rising = [...new Set(resets)].sort((a, b) => a - b);
  const response = beamResponder(beam, { sampling, intervalSeconds, resets: rising }, (change) => changes.push(change));
  for (let row = 0; row < time.length; row++) response.feed(time[row] as number, obscuration[row] as number);
  response.advance(end);
  return changes;
}

/** Middle of the clean samples after a stay, until the next one or the next step, half a minute at most [%]. */
function returned(
  { time, obscuration }: TestObscuration,
  stay: Excursion,
  all: readonly Excursion[],
  until: number,
): number | undefined {
  if (Number.isNaN(stay.end)) return undefined;
  const next = all[all.indexOf(stay) + 1]?.start ?? Number.POSITIVE_INFINITY;
  const to = Math.min(next, Math.max(until, stay.end + 3000), stay.end + 30_000);
  const values = obscuration.filter((_, row) => (time[row] as number) >= stay.end && (time[row] as number) < to);
  return values.length < 2 ? undefined : median(values);
}
