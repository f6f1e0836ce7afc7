import type { DiagnosisJson } from 'beamkeep';
import type { BeamRecord } from 'beamkeep/columns';
import type { Site } from 'beamkeep/site';
import type { BeamReading, EventTold, NumberedFinding, Reading } from './reading.js';

/** What the reading is put together from. */
export interface Read {
  readonly names: readonly string[];
  readonly bytes: number;
  readonly site: Site;
  readonly diagnosis: DiagnosisJson;
  readonly records: readonly BeamRecord[];
  readonly seconds: number;
  /** Whether the log was opened reduced. */
  readonly reduced: boolean;
}

/** The reading as the page sees it: findings numbered through, times as instants. */
export function readingOf({ names, bytes, site, diagnosis, records, seconds, reduced }: Read): Reading {
  let number = 0;
  const beams = diagnosis.beams.map((beam): BeamReading => {
    const record = records.find(({ id }) => id === beam.id);
    const findings = beam.findings
      .map((finding) => ({ ...finding, start: Date.parse(finding.start), end: Date.parse(finding.end) }))
      .sort((a, b) => a.start - b.start || a.end - b.end)
      .map(({ episodes, ...finding }): NumberedFinding => {
        number++;
        const spells = episodes?.map(([start, end]) => [Date.parse(start), Date.parse(end)] as const);
        return { ...finding, ...(spells ? { episodes: spells } : {}), number, beam: beam.id };
      });
    return {
      id: beam.id,
      from: instantOf(beam.from),
      to: instantOf(beam.to),
      samples: beam.samples,
      intervalSeconds: record?.intervalSeconds ?? Number.NaN,
      low: least(record?.trace.low),
      high: greatest(record?.trace.high),
      hasTemperature: record?.temperature !== undefined,
      findings,
      forecast: beam.forecast,
      assumed: beam.assumed,
    };
  });
  const numbered = beams.flatMap(({ findings }) => findings);
  const events = (diagnosis.events ?? []).map(({ at, beam, what, state, finding, words }): EventTold => {
    const found =
      finding &&
      numbered.find(
        (one) => one.beam === finding.beam && one.cause === finding.cause && one.start === Date.parse(finding.start),
      );
    return {
      at: Date.parse(at),
      beam,
      what,
      state,
      finding: found ? { number: found.number, cause: found.cause } : null,
      words,
    };
  });
  return {
    names,
    bytes,
    site,
    beams,
    input: diagnosis.input,
    events,
    clock: diagnosis.clock?.words ?? null,
    from: Math.min(...beams.map(({ from }) => from).filter(Number.isFinite)),
    to: Math.max(...beams.map(({ to }) => to).filter(Number.isFinite)),
    seconds,
    reduced: reduced ? keptOf(records) : null,
    json: JSON.stringify(diagnosis, null, 2),
  };
}

/** How many of the samples have a row of their own. */
function keptOf(records: readonly BeamRecord[]): { samples: number; kept: number } {
  let samples = 0;
  let kept = 0;
  for (const { trace } of records)
    for (const many of trace.count) {
      samples += many;
      if (many === 1) kept++;
    }
  return { samples, kept };
}

const instantOf = (iso: string | null): number => (iso === null ? Number.NaN : Date.parse(iso));

/** Least of many numbers (too many to spread into arguments); NaN of none. */
function least(values: Float32Array = new Float32Array(0)): number {
  let low = Number.NaN;
  for (const value of values) if (!(value >= low)) low = value;
  return low;
}

function greatest(values: Float32Array = new Float32Array(0)): number {
  let high = Number.NaN;
  for (const value of values) if (!(value <= high)) high = value;
  return high;
}
