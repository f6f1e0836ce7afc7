import { day, hour, rowAt, type Trace } from '../../columns/index.js';
import type { Estimate } from '../../optics/index.js';
import { median, quantile } from '../../statistics/index.js';
import type { BeamDiagnosis } from '../diagnoseBeams.js';
import type { CauseWord, Severity } from '../finding.js';
import { sampleNoise } from '../noise.js';
import type { Picture } from '../picture.js';
import { lossOf } from '../view.js';

/*
 * How a beam stands over some days: what a day usually loses, how far it swings, what it is at its low, how noisy its
 * samples are, what was found. Two of these are compared (`comparedBeam`): before and after a visit.
 *
 * A step inside the days (a knock, a cleaning) parts two levels, of which only one is how the beam stands: before a visit
 * the days since the last step count, after one the days until the first.
 *
 * Passing events are masked as for the slow course, so that one mist does not count as a change of the level.
 */

/** The days that count: at the end of a log (before a visit) or at its begin (after one). */
export interface StandingDays {
  readonly at: 'end' | 'begin';
  /** How many calendar days at most, 1 or more. */
  readonly days: number;
}

/** What was found on a beam within its days. */
export interface StandingFinding {
  readonly cause: CauseWord;
  readonly severity: Severity;
  /** Highest confidence of its findings. */
  readonly confidence: number;
  /** How often it came. */
  readonly times: number;
}

/** How a beam stands. Plain data, ready for JSON and for passing between workers. */
export interface BeamStanding {
  readonly id: string;
  /** First and last instant of its days [ms]; NaN without a usable day. */
  readonly from: number;
  readonly to: number;
  /** Whether a step of the level has cut its days short. */
  readonly stepped: boolean;
  /** Loss at the alarm threshold [dB]. */
  readonly alarmDecibels: number;
  /** One entry a usable day, in order. */
  readonly byDay: {
    /** Its first sample [ms]. */
    readonly start: readonly number[];
    /** Median loss [dB]. */
    readonly loss: readonly number[];
    /** Loss that a twentieth of the day passes: the low of the daily sway [dB]. */
    readonly low: readonly number[];
    /** From the loss that a twentieth of the day stays below to the one that a twentieth passes [dB]. */
    readonly swing: readonly number[];
    /** Range of the structure's temperature [K]; NaN where it is not logged. */
    readonly warmth: readonly number[];
  };
  /** Spread of single samples [% of clean air]. */
  readonly noise: number;
  /** Aim read from movement and temperature, over the log's last stretch; null where it cannot be told. */
  readonly aim: { readonly offset: Estimate; readonly movement: Estimate } | null;
  /** By cause, most confident first. */
  readonly findings: readonly StandingFinding[];
}

/** Share of a day's cells that must be there for the day to count. */
const leastShare = 0.5;

/**
 * How a beam stands at the end or the begin of its log.
 *
 * @param diagnosis of the beam
 * @param days which days count
 * @returns its standing; without days where the log holds no sample or no day of which half is there
 */
export function beamStanding({ id, picture, findings }: BeamDiagnosis, { at, days }: StandingDays): BeamStanding {
  if (picture === undefined) return { ...nothing, id };
  const usable = usableDays(picture);
  const free = withoutSteps(picture, usable, at);
  const [most, counted] = [usable, free].map((all) => (at === 'end' ? all.slice(-days) : all.slice(0, days))) as [
    UsableDay[],
    UsableDay[],
  ];
  const [first, last] = [counted[0], counted.at(-1)];
  const { view, heat } = picture;
  const alarmDecibels = lossOf(1 - view.beam.alarmThreshold / 100);
  if (first === undefined || last === undefined) return { ...nothing, id, alarmDecibels };
  const [from, to] = [first.start, last.end];
  return {
    id,
    from,
    to,
    stepped: counted.length < most.length,
    alarmDecibels,
    byDay: {
      start: counted.map(({ start }) => start),
      loss: counted.map(({ loss }) => loss),
      low: counted.map(({ low }) => low),
      swing: counted.map(({ low, high }) => low - high),
      warmth: counted.map(({ start, end }) => warmthOf(picture, start, end)),
    },
    noise: 100 * sampleNoise(within(view.trace, from, to), view.quantum),
    aim: heat?.aim.determined ? { offset: heat.aim.offset, movement: heat.aim.movement } : null,
    findings: foundWithin(findings, from, to),
  };
}

const nothing: Omit<BeamStanding, 'id'> = {
  from: Number.NaN,
  to: Number.NaN,
  stepped: false,
  alarmDecibels: Number.NaN,
  byDay: { start: [], loss: [], low: [], swing: [], warmth: [] },
  noise: Number.NaN,
  aim: null,
  findings: [],
};

interface UsableDay {
  readonly start: number;
  readonly end: number;
  readonly loss: number;
  readonly low: number;
  readonly high: number;
}

/** The calendar days of which at least half is there, events masked. */
function usableDays({ days, parts: { cells, course } }: Picture): UsableDay[] {
  const least = (leastShare * day) / cells.width;
  return days.flatMap(({ start, end, fromCell, toCell }) => {
    const losses = course.slice(fromCell, toCell).filter((loss) => !Number.isNaN(loss));
    if (losses.length < least) return [];
    return [{ start, end, loss: median(losses), low: quantile(losses, 0.95), high: quantile(losses, 0.05) }];
  });
}

/** The days since the last step, or until the first; all where a step leaves none. */
function withoutSteps({ parts, view }: Picture, usable: readonly UsableDay[], at: StandingDays['at']): UsableDay[] {
  const step = at === 'end' ? parts.steps.at(-1) : parts.steps[0];
  if (step === undefined) return [...usable];
  const instant = view.trace.time[step.row] as number;
  const free = usable.filter(({ start, end }) => (at === 'end' ? start >= instant : end < instant));
  return free.length > 0 ? free : [...usable];
}

/** Rows of a trace from one instant to another, as views. */
function within(trace: Trace, from: number, to: number): Trace {
  const rows = [rowAt(trace.time, from), rowAt(trace.time, to + 1)] as const;
  return {
    time: trace.time.subarray(...rows),
    until: trace.until.subarray(...rows),
    level: trace.level.subarray(...rows),
    low: trace.low.subarray(...rows),
    high: trace.high.subarray(...rows),
    spread: trace.spread.subarray(...rows),
    count: trace.count.subarray(...rows),
  };
}

/** Range of the structure's temperature within a day [K]; NaN where too little of it is logged. */
function warmthOf({ view: { record } }: Picture, start: number, end: number): number {
  const { temperature } = record;
  if (temperature === undefined || end - start < 12 * hour) return Number.NaN;
  const { time, value } = temperature;
  const kelvins = value.subarray(rowAt(time, start), rowAt(time, end + 1)).filter((each) => !Number.isNaN(each));
  return kelvins.length < 4 ? Number.NaN : quantile(kelvins, 0.95) - quantile(kelvins, 0.05);
}

/** By cause, what was found within a stretch of time: episodes are counted, a finding without any counts once. */
function foundWithin(findings: BeamDiagnosis['findings'], from: number, to: number): StandingFinding[] {
  const byCause = new Map<CauseWord, StandingFinding>();
  for (const { cause, severity, confidence, start, end, episodes } of findings) {
    const times = (episodes ?? [[start, end] as const]).filter(([a, b]) => b >= from && a <= to).length;
    if (times === 0) continue;
    const known = byCause.get(cause);
    const louder = known !== undefined && known.confidence >= confidence;
    byCause.set(cause, {
      cause,
      severity: known !== undefined && louder ? known.severity : severity,
      confidence: Math.max(confidence, known?.confidence ?? 0),
      times: times + (known?.times ?? 0),
    });
  }
  return [...byCause.values()].sort((a, b) => b.confidence - a.confidence);
}
