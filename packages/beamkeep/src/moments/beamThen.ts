import type { BeamRecord } from '../columns/index.js';
import { type Change, type DetectorState, equipmentObscuration } from '../response/index.js';
import type { Beam } from '../site/index.js';
import { clockTolerance } from './clockOffset.js';
import { type Cover, covering, type Told } from './covering.js';
import type { EntryKind } from './entryKind.js';
import { extremes, levelAt } from './levelAt.js';

/** A beam at the time of an event. */
export interface BeamThen<T extends Told> {
  readonly beam: Beam;
  /** That time, on the log's clock [ms]. */
  readonly at: number;
  /** State that the settings give; undefined where the log holds no sample. */
  readonly state: DetectorState | undefined;
  /** As the equipment sees it [%]; NaN where the log holds no sample. */
  readonly obscuration: number;
  /** Least and greatest obscuration [%] among the samples within `within` [ms] of that time. */
  readonly least: number;
  readonly greatest: number;
  readonly within: number;
  /** The findings at that time, the one that says most first. */
  readonly covers: readonly Cover<T>[];
  /** Usual interval between samples [s]. */
  readonly intervalSeconds: number;
  /** Where the time lies beside the log. */
  readonly place: 'within' | 'before' | 'after';
}

/** What a beam's log holds, what its settings make of it and what was found on it. */
export interface BeamCourse<T extends Told> {
  readonly beam: Beam;
  readonly record: BeamRecord;
  readonly changes: readonly Change[];
  readonly findings: readonly T[];
}

/**
 * A beam at the time of an event.
 *
 * @param kind of the event
 * @param at its time on the log's clock [ms]
 * @param reach how far a finding may lie from it [ms]
 */
export function beamThen<T extends Told>(
  { beam, record, findings, changes }: BeamCourse<T>,
  { kind, at }: { readonly kind: EntryKind; readonly at: number },
  reach: number,
): BeamThen<T> {
  const { trace, intervalSeconds } = record;
  const within = clockTolerance(intervalSeconds);
  const level = levelAt(trace, at, intervalSeconds);
  const { low, high } = extremes(trace, at - within, at + within);
  const [first, last] = [trace.time[0], trace.until.at(-1)];
  return {
    beam,
    at,
    state: Number.isNaN(level) ? undefined : stateAbout(changes, at, kind, within + 1000 * intervalSeconds, beam),
    obscuration: equipmentObscuration(beam, level),
    least: equipmentObscuration(beam, high),
    greatest: equipmentObscuration(beam, low),
    within,
    covers: covering(findings, at - within, at + within, reach),
    intervalSeconds,
    place: first !== undefined && at < first ? 'before' : last !== undefined && at > last ? 'after' : 'within',
  };
}

/**
 * The state at an event: where the event tells a signal, that signal if the settings give it within the tolerance,
 * since two clocks agree only so far and a change is dated at the next sample. Of a reset: the state once a loss that
 * still stands has had time to signal anew.
 */
function stateAbout(
  changes: readonly Change[],
  at: number,
  kind: EntryKind,
  tolerance: number,
  { alarmDelay }: Pick<Beam, 'alarmDelay'>,
): DetectorState {
  const near = ({ time, state }: Change) => state === kind && Math.abs(time - at) <= tolerance;
  const told = changes.find(near);
  if (told !== undefined) return told.state;
  const when = kind === 'reset' ? at + 1000 * alarmDelay + tolerance : at;
  return changes.findLast(({ time }) => time <= when)?.state ?? 'normal';
}
