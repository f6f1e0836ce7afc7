import type { BeamRecord } from './columns/index.js';
import {
  type BeamDiagnosis,
  type CauseWord,
  diagnoseBeams,
  type Evidence,
  localClock,
  type Picture,
  type Severity,
  trend,
} from './diagnosis/index.js';
import { forecastMargin } from './forecast/index.js';
import { type InputReport, type LogSource, type ReadOptions, readTraces } from './log/index.js';
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
  readonly input: InputReport;
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
 * @param options progress and cancelling
 * @returns the diagnosis, and the condensed records behind it
 * @throws UsageError where the log cannot be used, naming file, line or column
 */
export async function diagnose(
  sources: LogSource | readonly LogSource[],
  site: Site,
  options: ReadOptions = {},
): Promise<Diagnosis> {
  const { records, input } = await readTraces(sources, site, options);
  return { diagnosis: diagnosisOf(records, site, input), records };
}

/**
 * Explains records that are already in memory.
 *
 * @param records one a beam, as `readTraces` gives them
 * @param site the site
 * @param input what the reading had to mend or drop
 */
export function diagnosisOf(records: readonly BeamRecord[], site: Site, input: InputReport): DiagnosisJson {
  const diagnoses = diagnoseBeams(records, site);
  return {
    format: 'beamkeep-diagnosis/1',
    beams: diagnoses.map((d) => beamJson(d, records, site)),
    input,
  };
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

function beamJson(d: BeamDiagnosis, records: readonly BeamRecord[], site: Site): BeamDiagnosisJson {
  const beam = site.beams.find((b) => b.id === d.id);
  const record = records.find((r) => r.id === d.id);
  return {
    id: d.id,
    from: d.samples === 0 ? null : iso(d.from),
    to: d.samples === 0 ? null : iso(d.to),
    samples: d.samples,
    findings: d.findings.map(({ episodes, during, ...f }) => ({
      ...f,
      start: iso(f.start),
      end: iso(f.end),
      ...(episodes === undefined ? {} : { episodes: episodes.map(([a, b]) => [iso(a), iso(b)] as const) }),
      ...(during === undefined ? {} : { during }),
    })),
    forecast: beam === undefined || d.picture === undefined ? null : forecastJson(d, d.picture, beam, site),
    assumed: [...(beam?.assumed ?? []), ...(record?.assumed ?? [])],
  };
}
