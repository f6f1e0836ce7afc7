import { type BeamRecord, minute, type PanelEntry } from '../columns/index.js';
import { type DetectorState, respondToTrace } from '../response/index.js';
import type { Site } from '../site/index.js';
import { type BeamThen, beamThen } from './beamThen.js';
import { type ClockOffset, clockOffset, clockTolerance, fitOf } from './clockOffset.js';
import type { Told } from './covering.js';
import { entryKind } from './entryKind.js';
import { eventWords } from './eventWords.js';
import { type ExpectedSignal, expectedSignals, readBeam } from './expectedSignals.js';

/** What is known of one beam: its record and what was found on it. */
export interface KnownBeam<T extends Told> {
  readonly record: BeamRecord;
  readonly findings: readonly T[];
}

/** An entry of the panel's list, joined to what the log shows at that time. */
export interface JoinedEvent<T extends Told> {
  readonly entry: PanelEntry;
  /** The time of the entry on the log's clock [ms]. */
  readonly at: number;
  /** The beam that is told about: the entry's own, or of all the one whose log says most. */
  readonly beam: string;
  /** State that the settings give at that time; undefined where the log holds no sample. */
  readonly state: DetectorState | undefined;
  /** Obscuration then, as the equipment sees it [%]; NaN where the log holds no sample. */
  readonly obscuration: number;
  /** The finding that covers that time or lies nearest within reach, and what it is of. */
  readonly finding: T | undefined;
  /** What the log shows, in sentences. */
  readonly words: string;
}

/** The panel's clock beside the log's. */
export interface PanelClock {
  /** Panel's clock less the log's [ms], positive where the panel runs ahead; undefined where it cannot be told. */
  readonly offset: number | undefined;
  readonly source: 'given' | 'estimated' | 'unknown';
  /** Entries whose signal the log shows at that distance, and entries that could have one near. */
  readonly matched: number;
  readonly of: number;
  /** Largest less smallest distance of the matched [ms]. */
  readonly spread: number;
  /** What the log itself says of the distance, where another was given; undefined where it cannot tell. */
  readonly estimate: ClockOffset | undefined;
  /** Longest usual interval between samples of a beam [s]: signals may have come so much before they were dated. */
  readonly intervalSeconds: number;
}

/** The panel's list, joined to the log. */
export interface JoinedEvents<T extends Told> {
  readonly clock: PanelClock;
  readonly events: readonly JoinedEvent<T>[];
}

/** How far a finding may lie from an event [ms]; three times as far where the clocks are not known to agree. */
const nearby = 5 * minute;

/**
 * Joins the panel's list to what the log shows at each of its times.
 *
 * @param entries of the panel's list, on its own clock
 * @param known the beams of the site, each with its record and what was found on it
 * @param site thresholds, delays, visits
 * @param given panel's clock less the log's [ms], positive where the panel runs ahead; left out: estimated from the
 *   signals that both have seen
 *
 * The resets of the list end a latched fire signal, as visits of the site file do.
 */
export function joinEvents<T extends Told>(
  entries: readonly PanelEntry[],
  known: readonly KnownBeam<T>[],
  site: Site,
  given?: number,
): JoinedEvents<T> {
  const beams = known.flatMap((each) => {
    const beam = site.beams.find(({ id }) => id === each.record.id);
    return beam === undefined ? [] : [{ ...each, beam }];
  });
  const signals = beams.flatMap(({ beam, record }) => expectedSignals(record, beam, site));
  const clock = clockOf(entries, signals, Math.max(...beams.map(({ record }) => record.intervalSeconds), 0), given);
  const shift = clock.offset ?? 0;
  const events = entries.map((entry) => ({ entry, kind: entryKind(entry.what), at: entry.time - shift }));
  const resets = events.filter(({ kind }) => kind === 'reset');
  const seen = beams.map(({ beam, record, findings }) => {
    const own = resets.filter(({ entry }) => entry.beam === undefined || entry.beam === beam.id);
    const visits = [...site.visits, ...own.map(({ at }) => ({ time: at, work: 'reset' as const }))];
    const set = readBeam(beam, record);
    const { changes } = respondToTrace(record.trace, set, visits, record.intervalSeconds, site.sampling);
    return { beam: set, record, findings, changes };
  });
  const reach = clock.offset === undefined ? 3 * nearby : nearby;
  return {
    clock,
    events: events.map((event) => {
      const views = seen
        .filter(({ beam }) => event.entry.beam === undefined || event.entry.beam === beam.id)
        .map((each) => beamThen(each, event, reach));
      const [first] = views.sort((a, b) => says(b) - says(a));
      const { entry, at } = event;
      if (first === undefined) throw new RangeError(`event of "${entry.beam ?? 'all'}": no record of that beam`);
      const { beam, state, obscuration, covers } = first;
      return {
        entry,
        at,
        beam: beam.id,
        state,
        obscuration,
        finding: covers[0]?.finding,
        words: eventWords(event.kind, first),
      };
    }),
  };
}

function clockOf(
  entries: readonly PanelEntry[],
  signals: readonly ExpectedSignal[],
  intervalSeconds: number,
  given: number | undefined,
): PanelClock {
  const tolerance = clockTolerance(intervalSeconds);
  const estimate = clockOffset(entries, signals, tolerance);
  const known = { estimate, intervalSeconds };
  if (given !== undefined) return { source: 'given', ...fitOf(given, entries, signals, tolerance), ...known };
  if (estimate !== undefined) return { source: 'estimated', ...estimate, ...known };
  return { source: 'unknown', ...fitOf(0, entries, signals, tolerance), offset: undefined, ...known };
}

/** Which of several beams has most to say of an event that names none: fire, then fault, then the deeper loss. */
const says = ({ state, obscuration, covers: [cover] }: BeamThen<Told>): number =>
  (state === 'fire' ? 4000 : state === 'fault' ? 2000 : 0) +
  (cover === undefined ? 0 : 500 * cover.finding.confidence) +
  (Number.isNaN(obscuration) ? -500 : obscuration);
