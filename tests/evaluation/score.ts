import type { CauseWord } from '../../packages/beamkeep/src/diagnosis/finding.js';
import { type ComparedBeam, type ComparedFinding, steps } from './compare.js';
import { bootstrap, type Limits, poisson, wilson } from './uncertainty.js';

/** One number with how many it rests on and its 95 % interval. */
export interface Figure {
  readonly value: number;
  /** Beams, events, findings or, of a rate, what was counted. */
  readonly n: number;
  readonly limits: Limits;
}

/** How well one cause is told. */
export interface CauseScore {
  readonly cause: CauseWord;
  /** Beams on which it is at work. */
  readonly beams: number;
  readonly precision: Figure;
  readonly recall: Figure;
  readonly f1: Figure;
  /** Of steps: events at their time, of those on beams where the cause is stated; else beams whose stretches agree. */
  readonly localisation: Figure;
}

/** Everything the table shows. */
export interface Score {
  readonly logs: number;
  readonly beams: number;
  readonly beamYears: number;
  readonly labelledEvents: number;
  readonly judgedEvents: number;
  readonly causes: readonly CauseScore[];
  readonly macroF1: Figure;
  readonly localisation: Figure;
  readonly smokeRecall: Figure;
  /** smoke-like findings a beam-year on beams without smoke, all of them. */
  readonly falseSmokeUnexcused: Figure;
  /** The same, less those over dust or mist that grew past the alarm threshold. */
  readonly falseSmokeExcused: Figure;
  /** The same, less also those over a loss that must be called fire for its depth alone. */
  readonly falseSmokeByRule: Figure;
  /** Findings at watch or act a beam-year on beams on which nothing is at work. */
  readonly falseAlerts: Figure;
  readonly calibrationError: Figure;
  /** The same without smoke-like, which is stated at any confidence. */
  readonly calibrationErrorWithoutSmoke: Figure;
  readonly reliability: readonly ReliabilityBin[];
  /** Median of |median - true day| as a share of the time left at the end of the log. */
  readonly forecastError: Figure;
  /** Share of true days within low-high. */
  readonly forecastCoverage: Figure;
  /** A day is true and none was forecast. */
  readonly forecastMissing: number;
  /** It never comes and a day was forecast. */
  readonly forecastNeedless: number;
}

/** Findings whose confidence lies in one tenth. */
export interface ReliabilityBin {
  readonly confidence: number;
  readonly right: number;
  readonly n: number;
}

/**
 * Draws the figures from compared beams.
 *
 * @param beams of all logs
 * @param causes every cause, in the order of the table
 */
export function score(beams: readonly ComparedBeam[], causes: readonly CauseWord[], labelledEvents: number): Score {
  const scores = causes.map((cause) => causeScore(beams, cause));
  const present = causes.filter((cause) => beams.some((beam) => beam.events.some((event) => event.cause === cause)));
  const events = beams.flatMap((beam) => beam.events);
  const smoke = events.filter(({ cause }) => cause === 'smoke-like');
  const smokeFound = smoke.filter(({ verdict }) => verdict === 'found').length;
  const smokeless = beams.filter((beam) => beam.events.every(({ cause }) => cause !== 'smoke-like'));
  const falseSmoke = smokeless.flatMap((beam) => beam.findings.filter(({ cause }) => cause === 'smoke-like'));
  const healthy = beams.filter((beam) => beam.events.length === 0);
  const alerts = healthy.flatMap((beam) =>
    beam.findings.filter(({ severity, verdict }) => severity !== 'note' && verdict === 'wrong'),
  );
  const places = beams.flatMap((beam) => present.flatMap((cause) => placed(beam, cause)));
  return {
    logs: new Set(beams.map(({ log }) => log)).size,
    beams: beams.length,
    beamYears: years(beams),
    labelledEvents,
    judgedEvents: events.length,
    causes: scores,
    macroF1: {
      value: macroF1(beams, present),
      n: present.length,
      limits: bootstrap(beams, (drawn) => macroF1(drawn, present)),
    },
    localisation: share(places.filter(Boolean).length, places.length),
    smokeRecall: share(smokeFound, smoke.length),
    falseSmokeUnexcused: rate(falseSmoke.length, smokeless),
    falseSmokeExcused: rate(falseSmoke.filter(({ excused }) => !excused).length, smokeless),
    falseSmokeByRule: rate(falseSmoke.filter(({ excused, demanded }) => !excused && !demanded).length, smokeless),
    falseAlerts: rate(alerts.length, healthy),
    calibrationError: calibration(beams, () => true),
    calibrationErrorWithoutSmoke: calibration(beams, ({ cause }) => cause !== 'smoke-like'),
    reliability: reliability(beams.flatMap(({ findings }) => findings)).filter(({ n }) => n > 0),
    ...forecastScore(beams),
  };
}

const years = (beams: readonly ComparedBeam[]): number => beams.reduce((sum, beam) => sum + beam.years, 0);

const share = (successes: number, n: number): Figure => ({
  value: n === 0 ? Number.NaN : successes / n,
  n,
  limits: wilson(successes, n),
});

function rate(count: number, beams: readonly ComparedBeam[]): Figure {
  const length = years(beams);
  const [low, high] = poisson(count);
  return { value: count / length, n: count, limits: [low / length, high / length] };
}

function presenceCounts(beams: readonly ComparedBeam[], cause: CauseWord): Record<'hit' | 'miss' | 'false', number> {
  const counts = { hit: 0, miss: 0, false: 0 };
  for (const { presence } of beams) {
    const verdict = presence.get(cause);
    if (verdict === 'hit' || verdict === 'miss' || verdict === 'false') counts[verdict]++;
  }
  return counts;
}

/** Harmonic mean of precision and recall; NaN where the cause is neither there nor stated. */
function f1(beams: readonly ComparedBeam[], cause: CauseWord): number {
  const { hit, miss, false: wrong } = presenceCounts(beams, cause);
  return (2 * hit) / (2 * hit + miss + wrong);
}

/** Mean over causes that the drawn beams hold. */
function macroF1(beams: readonly ComparedBeam[], causes: readonly CauseWord[]): number {
  const each = causes.map((cause) => f1(beams, cause)).filter((value) => !Number.isNaN(value));
  return each.reduce((sum, value) => sum + value, 0) / each.length;
}

/** Of one beam and cause, for each thing that has a place: whether it is there. Only where the cause is stated. */
function placed(beam: ComparedBeam, cause: CauseWord): boolean[] {
  const events = beam.events.filter((event) => event.cause === cause);
  if (cause === 'smoke-like' || events.length === 0 || beam.presence.get(cause) !== 'hit') return [];
  if (steps.has(cause)) return events.map(({ verdict }) => verdict === 'found');
  return [(beam.agreement.get(cause) ?? 0) >= 0.5];
}

function causeScore(beams: readonly ComparedBeam[], cause: CauseWord): CauseScore {
  const { hit, miss, false: wrong } = presenceCounts(beams, cause);
  const places = beams.flatMap((beam) => placed(beam, cause));
  return {
    cause,
    beams: hit + miss,
    precision: share(hit, hit + wrong),
    recall: share(hit, hit + miss),
    f1: { value: f1(beams, cause), n: hit + miss + wrong, limits: bootstrap(beams, (drawn) => f1(drawn, cause)) },
    localisation: share(places.filter(Boolean).length, places.length),
  };
}

function reliability(findings: readonly ComparedFinding[]): ReliabilityBin[] {
  const bins = Array.from({ length: 10 }, () => ({ confidence: 0, right: 0, n: 0 }));
  for (const { confidence, verdict } of findings) {
    if (verdict === 'neither') continue;
    const bin = bins[Math.min(9, Math.floor(confidence * 10))];
    if (!bin) continue;
    bin.n++;
    bin.confidence += confidence;
    bin.right += verdict === 'right' ? 1 : 0;
  }
  return bins.map(({ confidence, right, n }) => ({ confidence: confidence / n, right: right / n, n }));
}

/** Mean distance between confidence and share of right ones, over ten bins, weighted by their findings. */
function expectedCalibrationError(findings: readonly ComparedFinding[]): number {
  const bins = reliability(findings).filter(({ n }) => n > 0);
  const total = bins.reduce((sum, { n }) => sum + n, 0);
  return bins.reduce(
    (sum, { confidence, right, n }) => sum + (n / total) * Math.abs(confidence - right),
    total ? 0 : Number.NaN,
  );
}

function calibration(beams: readonly ComparedBeam[], counts: (finding: ComparedFinding) => boolean): Figure {
  const of = (drawn: readonly ComparedBeam[]): ComparedFinding[] =>
    drawn.flatMap(({ findings }) => findings.filter((finding) => counts(finding) && finding.verdict !== 'neither'));
  return {
    value: expectedCalibrationError(of(beams)),
    n: of(beams).length,
    limits: bootstrap(beams, (drawn) => expectedCalibrationError(of(drawn))),
  };
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  const half = sorted.length / 2;
  return ((sorted[Math.ceil(half) - 1] ?? Number.NaN) + (sorted[Math.floor(half)] ?? Number.NaN)) / 2;
}

function forecastScore(
  beams: readonly ComparedBeam[],
): Pick<Score, 'forecastError' | 'forecastCoverage' | 'forecastMissing' | 'forecastNeedless'> {
  const asked = beams.flatMap(({ forecast }) => (forecast ? [forecast] : []));
  const both = asked.flatMap(({ day, from, stated }) => (day !== null && stated ? [{ day, from, ...stated }] : []));
  const errors = both.map(({ day, from, median: middle }) => Math.abs(middle - day) / (day - from));
  const inside = both.filter(({ day, low, high }) => low <= day && (high === null || day <= high)).length;
  return {
    forecastError: { value: median(errors), n: errors.length, limits: bootstrap(errors, median) },
    forecastCoverage: share(inside, both.length),
    forecastMissing: asked.filter(({ day, stated }) => day !== null && !stated).length,
    forecastNeedless: asked.filter(({ day, stated }) => day === null && stated).length,
  };
}
