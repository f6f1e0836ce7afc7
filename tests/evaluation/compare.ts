import type { CauseWord } from '../../packages/beamkeep/src/diagnosis/finding.js';
import { smokeEpisodeSpare } from '../../packages/beamkeep/src/numbers/index.js';
import type { StatedDiagnosis, StatedFinding, StatedForecast } from './diagnosisJson.js';
import { type Interval, intersectionOverUnion, overlap, pairs } from './intervals.js';
import type { BeamTruth, LabelledEvent, Truth } from './truth.js';

/*
 * Truth against diagnosis, beam by beam. This is the one comparison: the gate and the meter both read what it says.
 *
 * Every labelled event gets one verdict, so none can vanish:
 *
 *     misses its cause on this beam ------> missed
 *     stated, but not at that time -------> misplaced
 *     stated, and where it is ------------> found
 *
 * Every finding gets one, too: right (its cause is at work at that time), wrong, or neither: a cause so near to the rule
 * that no answer is asked for, a note about a trace, or smoke-like over dust that grew as smoke may or over a loss that
 * must be called fire.
 */

const hour = 3_600_000;
const week = 7 * 24 * hour;

/** Causes judged by when they begin, not by how long they last. */
export const steps: ReadonlySet<CauseWord> = new Set(['misalignment-step', 'cleaned']);

export type EventVerdict = 'found' | 'misplaced' | 'missed';
export type FindingVerdict = 'right' | 'wrong' | 'neither';

export interface ComparedEvent extends LabelledEvent {
  readonly verdict: EventVerdict;
}

export interface ComparedFinding {
  readonly cause: CauseWord;
  readonly start: number;
  readonly end: number;
  readonly confidence: number;
  readonly severity: StatedFinding['severity'];
  /** Whether it is a statement: confidence of 0.5 or more, smoke-like at any. */
  readonly stated: boolean;
  readonly verdict: FindingVerdict;
  /** smoke-like over dust or mist that grew as smoke may, by the truth. */
  readonly excused: boolean;
  /** smoke-like over a loss that must be called fire for its depth alone, whatever its cause. */
  readonly demanded: boolean;
}

/** Presence of one cause on one beam. */
export type Presence = 'hit' | 'miss' | 'false' | 'absent' | 'not asked';

export interface ComparedBeam {
  readonly log: string;
  readonly kind: string;
  readonly id: string;
  /** Length of the record [years]. */
  readonly years: number;
  readonly events: readonly ComparedEvent[];
  readonly findings: readonly ComparedFinding[];
  readonly presence: ReadonlyMap<CauseWord, Presence>;
  /** Of causes judged by their stretches: intersection over union, where the cause is there and stated. */
  readonly agreement: ReadonlyMap<CauseWord, number>;
  /** Of causes judged by their start: stated ones that belong to no labelled event, where the cause is there. */
  readonly strays: ReadonlyMap<CauseWord, number>;
  /** What the truth says of the day, and what was forecast; undefined where the truth asks for none. */
  readonly forecast: ComparedForecast | undefined;
}

export interface ComparedForecast {
  /** The true day [ms], null when it never comes. */
  readonly day: number | null;
  /** End of the log [ms]. */
  readonly from: number;
  readonly stated: { readonly median: number; readonly low: number; readonly high: number | null } | null;
}

/**
 * Compares one log's diagnosis with its truth.
 *
 * @param log name of the log, carried along
 * @param fires when a beam's loss called for fire, by the beam's id
 */
export function compare(
  log: string,
  truth: Truth,
  diagnosis: StatedDiagnosis,
  fires: ReadonlyMap<string, readonly Interval[]>,
  causes: readonly CauseWord[],
): ComparedBeam[] {
  const compared = truth.beams.map((beam) => {
    const said = diagnosis.beams.find(({ id }) => id === beam.id);
    return compareBeam({
      log,
      kind: truth.kind,
      beam,
      sampling: truth.samplingSeconds * 1000,
      findings: said?.findings ?? [],
      forecast: said?.forecast ?? null,
      fires: fires.get(beam.id) ?? [],
      causes,
    });
  });
  const labelled = truth.beams.reduce((sum, { causes: { length } }) => sum + length, 0);
  const judged = compared.reduce((sum, { events: { length } }) => sum + length, 0);
  if (labelled !== judged) throw new Error(`${log}: ${labelled} labelled events, ${judged} judged`);
  return compared;
}

interface Case {
  readonly log: string;
  readonly kind: string;
  readonly beam: BeamTruth;
  readonly sampling: number;
  readonly findings: readonly StatedFinding[];
  readonly forecast: StatedForecast | null;
  readonly fires: readonly Interval[];
  readonly causes: readonly CauseWord[];
}

function compareBeam({ log, kind, beam, sampling, findings, forecast, fires, causes }: Case): ComparedBeam {
  const tolerance = Math.max(3 * sampling, beam.to - beam.from < week ? (beam.to - beam.from) / 100 : hour);
  const place = { sampling, tolerance };
  const judged = findings.map((finding) => judgeFinding(finding, beam, fires, place));
  const presence = new Map(causes.map((cause) => [cause, presenceOf(cause, beam, judged, place)]));
  const agreement = new Map<CauseWord, number>();
  const strays = new Map<CauseWord, number>();
  const verdicts = new Map<LabelledEvent, EventVerdict>();
  for (const cause of new Set(beam.causes.map((event) => event.cause))) {
    const events = beam.causes.filter((event) => event.cause === cause);
    const stated = judged.filter((finding) => finding.stated && finding.cause === cause);
    if (presence.get(cause) !== 'hit') for (const event of events) verdicts.set(event, 'missed');
    else if (cause === 'smoke-like') {
      const partner = pairs(events, stated, (event, finding) => covers(finding, event, sampling));
      for (const [row, event] of events.entries()) verdicts.set(event, partner[row] === undefined ? 'missed' : 'found');
    } else if (steps.has(cause)) {
      const near = (event: LabelledEvent, finding: ComparedFinding): boolean =>
        Math.abs(finding.start - event.start) <= tolerance;
      const partner = pairs(events, stated, near);
      for (const [row, event] of events.entries())
        verdicts.set(event, partner[row] === undefined ? 'misplaced' : 'found');
      strays.set(cause, stated.length - partner.filter((row) => row !== undefined).length);
    } else {
      const share = bestAgreement(events, stated, judged, sampling);
      agreement.set(cause, share);
      for (const event of events) verdicts.set(event, share >= 0.5 ? 'found' : 'misplaced');
    }
  }
  return {
    log,
    kind,
    id: beam.id,
    years: (beam.to - beam.from) / (365.25 * 24 * hour),
    events: beam.causes.map((event) => ({ ...event, verdict: verdicts.get(event) ?? 'missed' })),
    findings: judged,
    presence,
    agreement,
    strays,
    forecast: compareForecast(beam, forecast),
  };
}

interface Place {
  readonly sampling: number;
  readonly tolerance: number;
}

type Stretch = { readonly start: number; readonly end: number };

const interval = ({ start, end }: Stretch, sampling: number): Interval => ({ from: start, to: end + sampling });

/** Whether a finding speaks of the time of an event: they share time, or a step is within the tolerance. */
function sameTime(finding: Stretch, event: LabelledEvent, { sampling, tolerance }: Place): boolean {
  if (steps.has(event.cause) && Math.abs(finding.start - event.start) <= tolerance) return true;
  return overlap(interval(finding, sampling), interval(event, sampling));
}

/** Whether a smoke-like finding serves an episode: it overlaps, and is at most its length and the spare of the rule, or ten times it. */
function covers(finding: Stretch, event: LabelledEvent, sampling: number): boolean {
  const episode = event.end - event.start;
  const longest = Math.max(episode + smokeEpisodeSpare.value * hour, 10 * episode);
  return finding.end - finding.start <= longest && overlap(interval(finding, sampling), interval(event, sampling));
}

function judgeFinding(
  finding: StatedFinding,
  beam: BeamTruth,
  fires: readonly Interval[],
  place: Place,
): ComparedFinding {
  const { cause, confidence, severity } = finding;
  const start = Date.parse(finding.start);
  const end = Date.parse(finding.end);
  const here = { start, end };
  const smoke = cause === 'smoke-like';
  const meant = (event: LabelledEvent): boolean => event.cause === cause || event.accepts.includes(cause);
  const right = beam.causes.some((event) => meant(event) && sameTime(here, event, place));
  const excused =
    smoke &&
    beam.couldBeSmoke.some((other) => overlap(interval(here, place.sampling), interval(other, place.sampling)));
  const demanded = smoke && fires.some((fire) => overlap(interval(here, place.sampling), fire));
  const traces = beam.traces.filter((trace) => trace.cause === cause);
  const passes = excused || demanded || traces.some(({ near }) => near) || (traces.length > 0 && severity === 'note');
  return {
    cause,
    start,
    end,
    confidence,
    severity,
    stated: smoke || confidence >= 0.5,
    verdict: right ? 'right' : passes ? 'neither' : 'wrong',
    excused,
    demanded,
  };
}

function presenceOf(cause: CauseWord, beam: BeamTruth, findings: readonly ComparedFinding[], place: Place): Presence {
  const stated = findings.filter((finding) => finding.stated && finding.cause === cause);
  const events = beam.causes.filter((event) => event.cause === cause);
  if (events.length > 0) {
    if (stated.length > 0) return 'hit';
    const other = events.some(({ accepts, ...event }) =>
      findings.some(
        (finding) =>
          finding.stated && accepts.includes(finding.cause) && sameTime(finding, { accepts, ...event }, place),
      ),
    );
    return other ? 'hit' : 'miss';
  }
  if (stated.some(({ verdict }) => verdict === 'wrong')) return 'false';
  return stated.length > 0 || beam.traces.some((trace) => trace.near && trace.cause === cause) ? 'not asked' : 'absent';
}

/** Best of: the findings of this cause alone, and together with those of a word that the truth accepts. */
function bestAgreement(
  events: readonly LabelledEvent[],
  stated: readonly ComparedFinding[],
  all: readonly ComparedFinding[],
  sampling: number,
): number {
  const truth = events.map((event) => interval(event, sampling));
  const accepted = new Set(events.flatMap(({ accepts }) => accepts));
  const others = all.filter((finding) => finding.stated && accepted.has(finding.cause));
  const choices = [stated, others, [...stated, ...others]].filter(({ length }) => length > 0);
  return Math.max(
    ...choices.map((findings) =>
      intersectionOverUnion(
        truth,
        findings.map((finding) => interval(finding, sampling)),
      ),
    ),
  );
}

function compareForecast({ forecast, to }: BeamTruth, stated: StatedForecast | null): ComparedForecast | undefined {
  if (!forecast) return undefined;
  const day = forecast.dateWithDailyLow ?? forecast.date;
  return {
    day: day === null ? null : Date.parse(day),
    from: to,
    stated: stated && {
      median: Date.parse(stated.median),
      low: Date.parse(stated.low),
      high: stated.high === null ? null : Date.parse(stated.high),
    },
  };
}
