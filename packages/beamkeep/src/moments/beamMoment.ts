import type { BeamRecord, Trace } from '../columns/index.js';
import { type Change, respondToTrace } from '../response/index.js';
import type { Beam, Site } from '../site/index.js';
import type { AskedTime } from './askedTime.js';
import { type Course, courseAbout, type Off } from './course.js';
import { covering, longest, type Told } from './covering.js';
import { readBeam } from './expectedSignals.js';
import { levelAt } from './levelAt.js';
import { type Recurrence, reachOfTime, recurrence } from './recurrence.js';
import { timeOfDayAt, type WallClock, weekdayOf } from './wallClock.js';

/** What a beam did about the time that was asked about, what recurs then and what it was found to be. */
export interface BeamMoment<T extends Told, O extends Off> {
  /** Whether one instant was asked about, rather than a time of day. */
  readonly instant: boolean;
  /** The instant told about [ms]: the one asked, or of many the one with the deepest stretch; NaN: the log holds none. */
  readonly moment: number;
  /** Whether the log holds a sample at that instant. */
  readonly sampled: boolean;
  /** True obscuration at that instant [%]. */
  readonly obscuration: number;
  /** What the signal did; undefined where the log holds no sample. */
  readonly course: Course | undefined;
  /** State that the settings give at that instant; undefined where the log holds no sample. */
  readonly state: Change['state'] | undefined;
  /** Fire and fault signals that the settings give within the stretch, a latched one each time anew. */
  readonly signals: readonly Change[];
  readonly recurs: Recurrence<O>;
  /** Day of the week that is counted apart, 1 Monday to 7 Sunday; undefined: none. */
  readonly weekday: number | undefined;
  /** Since midnight, as the clock shows it [ms]. */
  readonly timeOfDay: number;
  /** What was found there: of an instant what says most first, of a time of day the most usual first. */
  readonly causes: readonly CauseThen<T>[];
  /** Days that show something to which no finding was given [ms, when the clock shows that time]. */
  readonly unnamed: readonly number[];
}

/** A cause that was found at the time asked about. */
export interface CauseThen<T extends Told> {
  readonly cause: string;
  /** The days on which it says most of that time [ms, when the clock shows it]; of an instant: that instant. */
  readonly moments: readonly number[];
  /** Its finding at the instant told about, or else on the last of the days. */
  readonly finding: T;
  /** Whether that finding lies at the instant told about. */
  readonly there: boolean;
  /** How many findings of this cause lie on those days. */
  readonly findings: number;
}

/** What is known of a beam. */
export interface BeamKnown<T extends Told, O extends Off> {
  readonly beam: Beam;
  readonly record: BeamRecord;
  readonly findings: readonly T[];
  /** Its stretches off the usual course, in order of time. */
  readonly offs: readonly O[];
}

/**
 * What a beam did about a time.
 *
 * @param asked an instant, or a time of day on all days or on one of the week
 * @param known the beam, its record and what was found on it
 * @param site its visits and its sampling
 * @param clock of the site
 */
export function beamMoment<T extends Told, O extends Off>(
  asked: AskedTime,
  { beam, record, findings, offs }: BeamKnown<T, O>,
  site: Site,
  clock: WallClock,
): BeamMoment<T, O> {
  const { trace, intervalSeconds } = record;
  const holds = (moment: number) => !Number.isNaN(levelAt(trace, moment, intervalSeconds));
  const log = { from: trace.time[0] ?? Number.NaN, to: trace.until.at(-1) ?? Number.NaN, intervalSeconds, holds };
  const reach = reachOfTime(intervalSeconds);
  const short = offs.filter(({ start, end }) => end - start <= longest);
  const at = asked.kind === 'instant' ? asked.instant : undefined;
  const near = ({ start, end }: Off) => at !== undefined && Math.max(start - at, at - end) <= reach / 2;
  const own = deepest(offs.filter(near));
  const timeOfDay = asked.kind === 'instant' ? timeOfDayAt(clock, asked.instant) : asked.timeOfDay;
  const weekday = asked.kind === 'instant' ? weekdayOf(clock.dayNumber(asked.instant)) : asked.weekday;
  const question = (sign: 1 | -1) => recurrence({ timeOfDay, weekday, sign }, short, log, clock);
  const recurs = own === undefined ? moreOften(question(1), question(-1)) : question(own.sign);
  const shown = recurs.days.filter((each) => weekday === undefined || each.weekday === weekday);
  const best = shown.reduce<(typeof shown)[number] | undefined>(
    (most, each) => ((each.off?.depth ?? -1) > (most?.off?.depth ?? -2) ? each : most),
    undefined,
  );
  const moment = at ?? best?.moment ?? Number.NaN;
  const off = at === undefined ? best?.off : own;
  const sampled = holds(moment);
  const edges = at === undefined ? [] : edgesNear(findings, at, reach / 2);
  const course = sampled || off !== undefined ? courseThen(trace, moment, off, edges, intervalSeconds) : undefined;
  const set = readBeam(beam, record);
  const { changes } = respondToTrace(trace, set, site.visits, intervalSeconds, site.sampling);
  const anew = respondToTrace(trace, { ...set, latching: false }, [], intervalSeconds, site.sampling).changes;
  const [from, to] = course === undefined ? [moment, moment] : [course.start, course.end];
  return {
    instant: at !== undefined,
    moment,
    sampled,
    obscuration: 100 * (1 - levelAt(trace, moment, intervalSeconds)),
    course,
    state: sampled ? (changes.findLast(({ time }) => time <= moment)?.state ?? 'normal') : undefined,
    signals: anew.filter(({ time, since, state }) => state !== 'normal' && time >= from && since <= to),
    recurs,
    weekday,
    timeOfDay,
    ...(at === undefined ? causesOfDays(findings, shown, moment) : causesOfInstant(findings, at, off, reach / 2)),
  };
}

/** Where what goes on for long, or for good, begins or ends near an instant, the nearest first [ms]. */
const edgesNear = (findings: readonly Told[], at: number, reach: number): readonly number[] =>
  findings
    .filter(({ start, end, episodes }) => episodes === undefined && (end === start || end - start > longest))
    .flatMap(({ start, end }) => [start, end])
    .filter((edge) => Math.abs(edge - at) <= reach)
    .sort((a, b) => Math.abs(a - at) - Math.abs(b - at));

/** What the signal did: the stretch that lies there, or a step where that is the larger of the two. */
function courseThen(
  trace: Trace,
  moment: number,
  off: Off | undefined,
  edges: readonly number[],
  intervalSeconds: number,
): Course {
  const own = courseAbout(trace, moment, off, intervalSeconds);
  const [edge] = edges;
  if (edge === undefined) return own;
  const step = courseAbout(trace, edge, undefined, intervalSeconds);
  const size = Math.abs(step.after - step.before) / 100;
  return step.kind === 'step' && size > (off?.depth ?? 0) ? step : own;
}

const deepest = <O extends Off>(offs: readonly O[]): O | undefined =>
  offs.reduce<O | undefined>((most, each) => (each.depth > (most?.depth ?? -1) ? each : most), undefined);

/** Of lost and gained light, what comes on more days. */
const moreOften = <O extends Off>(lost: Recurrence<O>, gained: Recurrence<O>): Recurrence<O> =>
  gained.onWeekday.shown > lost.onWeekday.shown ? gained : lost;

type Causes<T extends Told> = Pick<BeamMoment<T, Off>, 'causes' | 'unnamed'>;

function causesOfInstant<T extends Told>(
  findings: readonly T[],
  at: number,
  off: Off | undefined,
  reach: number,
): Causes<T> {
  const covers = covering(findings, off?.start ?? at, off?.end ?? at, reach);
  return {
    causes: covers.map(({ finding }) => ({ cause: finding.cause, moments: [at], finding, there: true, findings: 1 })),
    unnamed: off !== undefined && covers.length === 0 ? [at] : [],
  };
}

/** What says most on each of the days that show it; where none does, what goes on at that time. */
function causesOfDays<T extends Told>(
  findings: readonly T[],
  days: Recurrence<Off>['days'],
  moment: number,
): Causes<T> {
  const showing = days.filter(({ off }) => off !== undefined);
  const unnamed: number[] = [];
  const causes = new Map<string, { moments: number[]; finding: T; there: boolean; all: Set<T> }>();
  for (const { moment: then, off } of showing.length > 0 ? showing : days) {
    const covers = covering(findings, off?.start ?? then, off?.end ?? then, 0);
    // A loss of months is at work on every day and explains no dip of an hour.
    const finding = covers.find(({ start, end }) => off === undefined || end - start <= longest)?.finding;
    if (finding === undefined) {
      if (off !== undefined) unnamed.push(then);
      continue;
    }
    const there = then === moment;
    const known = causes.get(finding.cause) ?? { moments: [], finding, there, all: new Set() };
    known.moments.push(then);
    known.all.add(finding);
    if (!known.there) Object.assign(known, { finding, there });
    causes.set(finding.cause, known);
  }
  return {
    causes: [...causes]
      .map(([cause, { all, ...known }]) => ({ cause, ...known, findings: all.size }))
      .sort((a, b) => b.moments.length - a.moments.length),
    unnamed,
  };
}
