import { type BeamRecord, UsageError } from './columns/index.js';
import {
  type BeamDiagnosis,
  type CauseWord,
  type Double,
  diagnoseBeams,
  type Evidence,
  type Finding,
  localClock,
  type Picture,
  type Severity,
  trend,
} from './diagnosis/index.js';
import { forecastMargin } from './forecast/index.js';
import { type InputReport, type LogSource, type PanelList, type ReadOptions, readTraces } from './log/index.js';
import type { PanelClock } from './moments/index.js';
import type { DetectorState } from './response/index.js';
import type { Beam, Site } from './site/index.js';

/** One finding, as the JSON output has it: instants are ISO 8601 in UTC. */
export interface FindingJson {
  readonly cause: CauseWord;
  readonly start: string;
  readonly end: string;
  readonly ongoing: boolean;
  readonly confidence: number;
  readonly severity: Severity;
  readonly summary: string;
  readonly evidence: readonly Evidence[];
  readonly action: string;
  readonly settles: string;
  readonly episodes?: readonly (readonly [string, string])[];
  readonly during?: string;
  /** What comes second, and how to part the two on site; only where it was asked for. */
  readonly runnerUp?: RunnerUpJson;
}

/** The cause that comes second for a finding, and how to part the two on site. */
export interface RunnerUpJson {
  readonly cause: Double;
  /** The finding of that cause, at the same time or another; null where the cause is only alike. */
  readonly finding: { readonly start: string; readonly confidence: number; readonly sameTime: boolean } | null;
  /** Why the signal may not part the two. */
  readonly alike: string;
  /** What to do on site. */
  readonly test: string;
  /** What it looks like when it is the one, and the other. */
  readonly outcomes: readonly { readonly cause: Double; readonly looks: string }[];
}

/** An entry of the panel's list, joined to what the log shows at that time. */
export interface EventJson {
  /** On the panel's clock, ISO 8601 in UTC. */
  readonly time: string;
  /** As the list has it; null for all. */
  readonly beam: string | null;
  readonly what: string;
  /** On the log's clock. */
  readonly at: string;
  /** Panel's clock less the log's [s]; null where it cannot be told and is taken as none. */
  readonly clockOffsetSeconds: number | null;
  /** State that the settings give; null where the log holds no sample. */
  readonly state: DetectorState | null;
  /** As the equipment sees it [%]; null where the log holds no sample. */
  readonly obscuration: number | null;
  /** The finding at that time; null where none lies near. */
  readonly finding: { readonly beam: string; readonly cause: CauseWord; readonly start: string } | null;
  readonly words: string;
}

/** The panel's clock beside the log's. */
export interface ClockJson {
  /** Panel's clock less the log's [s], positive where the panel runs ahead; null where it cannot be told. */
  readonly offsetSeconds: number | null;
  readonly source: PanelClock['source'];
  /** Entries whose signal the log shows at that distance, and those that could have one near. */
  readonly matched: number;
  readonly of: number;
  /** Largest less smallest distance of the matched [s]. */
  readonly spreadSeconds: number;
  /** What the log itself says, where it can tell [s]. */
  readonly estimateSeconds: number | null;
  readonly words: string;
}

/** When the margin is gone: calendar dates in the site's zone, an 80 % interval. */
export interface ForecastJson {
  /** Obscuration that ends the margin [%]. */
  readonly obscuration: number;
  readonly ends: 'alarm' | 'compensation-limit';
  readonly median: string;
  readonly low: string;
  /** Open where it is null. */
  readonly high: string | null;
}

/** One beam of a diagnosis. */
export interface BeamDiagnosisJson {
  readonly id: string;
  /** First and last sample; null where the log holds none of the beam. */
  readonly from: string | null;
  readonly to: string | null;
  readonly samples: number;
  readonly findings: readonly FindingJson[];
  readonly forecast: ForecastJson | null;
  readonly assumed: readonly string[];
}

/** A diagnosis, ready for `JSON.stringify`. */
export interface DiagnosisJson {
  readonly format: 'beamkeep-diagnosis/1';
  readonly beams: readonly BeamDiagnosisJson[];
  /** Only where a panel's list was given. */
  readonly clock?: ClockJson;
  readonly events?: readonly EventJson[];
  readonly input: InputReport;
}

/** The panel's list, joined to what the log shows. */
export interface EventsJson {
  readonly clock: ClockJson;
  readonly events: readonly EventJson[];
}

/** A panel's list that brings what joins it to a log, so that whoever has none need not load that. */
export interface JoinableList extends PanelList {
  /**
   * The list joined to what the log shows.
   *
   * @param diagnoses of the beams
   * @param records one a beam
   * @param site thresholds, delays, visits
   * @param clockOffsetSeconds panel's clock less the log's [s]; undefined: estimated from the list
   */
  joined(
    diagnoses: readonly BeamDiagnosis[],
    records: readonly BeamRecord[],
    site: Site,
    clockOffsetSeconds: number | undefined,
  ): EventsJson;
}

/**
 * Tells what comes second for a finding and how to part the two; nothing where nothing looks like it. It brings its words
 * along, so that whoever does not ask need not load them.
 *
 * @param findings of the same beam
 */
export type SecondCause = (finding: Finding, findings: readonly Finding[]) => { readonly runnerUp?: RunnerUpJson };

/** What may be asked beside the causes. */
export interface DiagnoseQuestion {
  /** The panel's list, from `panelEntries` of `beamkeep/moments`: each entry is joined to what the log shows then. */
  readonly events?: JoinableList | undefined;
  /** Panel's clock less the log's [s], positive where the panel runs ahead; left out: estimated from the list. */
  readonly clockOffsetSeconds?: number | undefined;
  /** `secondCause` of `beamkeep/moments`: each finding tells what comes second and how to part the two. */
  readonly explain?: SecondCause | undefined;
}

/** A diagnosis with the records that it was made from, for whoever wants to draw them. */
export interface Diagnosis {
  readonly diagnosis: DiagnosisJson;
  readonly records: readonly BeamRecord[];
}

/**
 * Reads a log and explains it: why did these beams alarm or fault, and what will they do next?
 *
 * @param sources the log, one file or several
 * @param site the site, from `parseSite`
 * @param options progress and cancelling; a panel's list to be joined; whether to tell what comes second
 * @returns the diagnosis, and the condensed records behind it
 * @throws UsageError where the log cannot be used, naming file, line or column; where `explain` is not a function
 */
export async function diagnose(
  sources: LogSource | readonly LogSource[],
  site: Site,
  options: ReadOptions & DiagnoseQuestion = {},
): Promise<Diagnosis> {
  checkExplain(options.explain);
  const { records, input } = await readTraces(sources, site, options);
  return { diagnosis: diagnosisOf(records, site, input, options), records };
}

/**
 * Explains records that are already in memory.
 *
 * @param records one a beam, as `readTraces` gives them
 * @param site the site
 * @param input what the reading had to mend or drop
 * @param question what is asked beside the causes
 * @throws UsageError where `explain` is not a function
 */
export function diagnosisOf(
  records: readonly BeamRecord[],
  site: Site,
  input: InputReport,
  { events, clockOffsetSeconds, explain }: DiagnoseQuestion = {},
): DiagnosisJson {
  checkExplain(explain);
  const diagnoses = diagnoseBeams(records, site);
  return {
    format: 'beamkeep-diagnosis/1',
    beams: diagnoses.map((d) => beamJson(d, records, site, explain)),
    ...(events === undefined ? {} : events.joined(diagnoses, records, site, clockOffsetSeconds)),
    input: events === undefined ? input : { ...input, notes: [...input.notes, ...events.notes] },
  };
}

/** Refuses what callers without types give as a switch, before a long log is read. */
function checkExplain(explain: unknown): void {
  if (explain != null && typeof explain !== 'function')
    throw new UsageError(`explain is ${explain}: give secondCause of beamkeep/moments, or nothing`);
}

/** The forecast of a beam whose slow loss still goes on, in calendar dates of the site's zone. */
function forecastJson(d: BeamDiagnosis, picture: Picture, beam: Beam, site: Site): ForecastJson | null {
  const slow = trend(picture, d.findings);
  const forecast = slow === undefined ? null : forecastMargin({ ...slow, beam });
  if (forecast === null) return null;
  const { obscuration, ends, median, low, high } = forecast;
  const clock = localClock(site.timeZone, low, Math.max(median, high ?? median));
  const date = (instant: number): string => iso(instant + clock.offset(instant)).slice(0, 10);
  return {
    obscuration: Number(obscuration.toPrecision(4)),
    ends,
    median: date(median),
    low: date(low),
    high: high === null ? null : date(high),
  };
}

const iso = (instant: number): string => new Date(instant).toISOString();

function beamJson(
  d: BeamDiagnosis,
  records: readonly BeamRecord[],
  site: Site,
  explain: SecondCause | undefined,
): BeamDiagnosisJson {
  const beam = site.beams.find((b) => b.id === d.id);
  const record = records.find((r) => r.id === d.id);
  return {
    id: d.id,
    from: d.samples === 0 ? null : iso(d.from),
    to: d.samples === 0 ? null : iso(d.to),
    samples: d.samples,
    findings: d.findings.map((f) => ({ ...findingJson(f), ...explain?.(f, d.findings) })),
    forecast: beam === undefined || d.picture === undefined ? null : forecastJson(d, d.picture, beam, site),
    assumed: [...(beam?.assumed ?? []), ...(record?.assumed ?? [])],
  };
}

/** A finding as the JSON output has it. */
export function findingJson({ episodes, during, ...f }: Finding): FindingJson {
  return {
    ...f,
    start: iso(f.start),
    end: iso(f.end),
    ...(episodes === undefined ? {} : { episodes: episodes.map(([a, b]) => [iso(a), iso(b)] as const) }),
    ...(during === undefined ? {} : { during }),
  };
}
