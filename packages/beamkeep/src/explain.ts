import { type BeamRecord, UsageError } from './columns/index.js';
import { type FindingJson, findingJson, type RunnerUpJson } from './diagnose.js';
import {
  type BeamDiagnosis,
  beforeTests,
  type CauseWord,
  diagnoseBeams,
  type Finding,
  localClock,
} from './diagnosis/index.js';
import { type InputReport, type LogSources, type ReadOptions, readTraces } from './log/index.js';
import {
  type AskedTime,
  askedTime,
  beamMoment,
  type Course,
  type DayCount,
  isQuiet,
  momentWords,
  type Recurrence,
  type WallClock,
} from './moments/index.js';
import type { DetectorState } from './response/index.js';
import { secondCause } from './secondCause.js';
import { type Beam, nearest, quoted, type Site } from './site/index.js';

/** What is asked about a log. */
export interface ExplainQuestion {
  /** An instant, a time on the site's clocks, or a time of day with or without a day of the week: "Tue 06:40". */
  readonly at: string;
  /** The `id` of a beam; left out: every beam. */
  readonly beam?: string | undefined;
}

/** What the signal did about a moment. Obscuration is the true one [%]; null where no sample tells. */
export interface CourseJson {
  /** `loss`, `gain`: off its usual course for a while; `step`: another level after than before; `steady`: neither. */
  readonly kind: Course['kind'];
  readonly start: string;
  readonly end: string;
  readonly before: number | null;
  readonly after: number | null;
  /** Furthest from what was before, and when. */
  readonly extreme: number | null;
  readonly extremeAt: string | null;
  readonly lengthSeconds: number;
  /** From 10 to 90 % of the way there, at most. */
  readonly growthSeconds: number | null;
  /** From 90 back to 10 %, at most. */
  readonly recoverySeconds: number | null;
  /** Whether it goes on at the end of the log. */
  readonly ongoing: boolean;
}

/** What recurs at the time of day. */
export interface RecurrenceJson {
  /** On the site's clocks. */
  readonly timeOfDay: string;
  /** Day of the week that is counted apart, 1 Monday to 7 Sunday; null: none. */
  readonly weekday: number | null;
  /** Days that show it, of days with a sample then: on that day of the week, or on all where none is counted apart. */
  readonly onWeekday: DayCount;
  readonly onOtherDays: DayCount;
  /** Monday first. */
  readonly byWeekday: readonly DayCount[];
  readonly keepsTo: Recurrence<never>['keepsTo'];
  /** Median of the days that show it [% of clean air], and their greatest; null where none does. */
  readonly depth: number | null;
  readonly greatestDepth: number | null;
  /** Median length [s]. */
  readonly lengthSeconds: number | null;
  /** Each time it came on a day asked about. */
  readonly times: readonly { readonly start: string; readonly end: string; readonly depth: number }[];
}

/** A cause that was found at the time asked about. */
export interface CauseThenJson {
  readonly cause: CauseWord;
  /** On how many of the days asked about it says most; 1 for an instant. */
  readonly days: number;
  readonly finding: FindingJson;
}

/** One beam at the time asked about. */
export interface BeamExplanationJson {
  readonly id: string;
  /** The instant told about: the one asked, or of many the one with the deepest loss; null: the log holds none. */
  readonly moment: string | null;
  /** State that the settings give then; null where the log holds no sample. */
  readonly state: DetectorState | null;
  /** True obscuration then [%]; null where the log holds no sample. */
  readonly obscuration: number | null;
  readonly signal: CourseJson | null;
  /** Signals that the settings give within the stretch. */
  readonly signals: readonly { readonly time: string; readonly state: DetectorState }[];
  readonly recurs: RecurrenceJson;
  /** Whether nothing stands out. */
  readonly quiet: boolean;
  /** The most usual first. */
  readonly causes: readonly CauseThenJson[];
  /** Days that show something to which no finding was given. */
  readonly unnamedDays: number;
  /** What comes second, and how to part the two; null where nothing looks like the first. */
  readonly runnerUp: RunnerUpJson | null;
  /** What to do on site, smoke before all, and what would settle the doubt; null where nothing was found. */
  readonly action: string | null;
  readonly settles: string | null;
  /** The same in sentences. */
  readonly words: {
    readonly recurs: string;
    readonly signal: string;
    readonly causes: readonly string[];
  };
  readonly cautions: readonly string[];
  readonly assumed: readonly string[];
}

/** An explanation, ready for `JSON.stringify`. */
export interface ExplanationJson {
  readonly format: 'beamkeep-explanation/1';
  /** As it was asked, and as it was understood. */
  readonly asked: {
    readonly at: string;
    readonly instant: string | null;
    readonly timeOfDay: string | null;
    readonly weekday: number | null;
  };
  readonly beams: readonly BeamExplanationJson[];
  /** Holds for every test on site. */
  readonly beforeTests: string;
  readonly input: InputReport;
}

/**
 * Reads a log and answers: why then? What the signal did at a time, what recurs at that hour and day of the week, what
 * it is, what comes second, what to do.
 *
 * @param sources the log, one file or several
 * @param site the site, from `parseSite`
 * @param question the time, and the beam where only one is meant; progress and cancelling
 * @throws UsageError where the log cannot be used, the time is none or lies outside the log, or the beam is unknown
 * @example await explain(logOfText(csv), parseSite(json), { at: 'Tue 06:40' })
 */
export async function explain(
  sources: LogSources,
  site: Site,
  { at, beam, ...options }: ExplainQuestion & ReadOptions,
): Promise<ExplanationJson> {
  const question = understood({ at, beam }, site);
  const { records, input } = await readTraces(sources, site, options);
  return answered(records, site, input, { at, beam }, question);
}

/**
 * Explains a time of records that are already in memory.
 *
 * @param records one a beam, as `readTraces` gives them
 * @param site the site
 * @param input what the reading had to mend or drop
 * @param question the time, and the beam where only one is meant
 * @throws UsageError where the time is none or lies outside the log, or the beam is unknown
 */
export function explanationOf(
  records: readonly BeamRecord[],
  site: Site,
  input: InputReport,
  question: ExplainQuestion,
): ExplanationJson {
  return answered(records, site, input, question, understood(question, site));
}

/** The time as it is understood, before anything is read for it. */
function understood({ at, beam }: ExplainQuestion, site: Site): AskedTime {
  const ids = site.beams.map(({ id }) => id);
  if (beam !== undefined && !ids.includes(beam)) {
    const like = nearest(beam, ids);
    throw new UsageError(
      `${quoted(beam)} is no beam of the site; its beams are ${ids.join(', ')}${like === undefined ? '' : ` (${like}?)`}`,
    );
  }
  return askedTime(at, site.timeZone);
}

function answered(
  records: readonly BeamRecord[],
  site: Site,
  input: InputReport,
  { at, beam }: ExplainQuestion,
  asked: AskedTime,
): ExplanationJson {
  const wanted = records.filter(({ id }) => beam === undefined || id === beam);
  const [from, to] = spanOf(wanted);
  if (asked.kind === 'instant' && !(asked.instant >= from && asked.instant <= to)) {
    const held = Number.isFinite(from) ? `it goes from ${iso(from)} to ${iso(to)}` : 'it holds no sample';
    throw new UsageError(`${quoted(at)} lies outside the log: ${held}`);
  }
  const clock = localClock(site.timeZone, Number.isFinite(from) ? from : 0, Number.isFinite(to) ? to : 0);
  // All of them, for what one beam shows tells of another.
  const diagnoses = diagnoseBeams(records, site);
  const isInstant = asked.kind === 'instant';
  return {
    format: 'beamkeep-explanation/1',
    asked: {
      at,
      instant: isInstant ? iso(asked.instant) : null,
      timeOfDay: isInstant ? null : clockTime(asked.timeOfDay),
      weekday: isInstant ? null : (asked.weekday ?? null),
    },
    beams: wanted.flatMap((record) => {
      const settings = site.beams.find(({ id }) => id === record.id);
      const diagnosis = diagnoses.find(({ id }) => id === record.id);
      if (settings === undefined || diagnosis === undefined) return [];
      return [beamJson(asked, settings, record, diagnosis, site, clock)];
    }),
    beforeTests,
    input,
  };
}

/** First and last sample of all records; infinite the wrong way round where there is none. */
const spanOf = (records: readonly BeamRecord[]): readonly [number, number] => [
  Math.min(...records.map(({ trace }) => trace.time[0] ?? Number.POSITIVE_INFINITY)),
  Math.max(...records.map(({ trace }) => trace.until.at(-1) ?? Number.NEGATIVE_INFINITY)),
];

function beamJson(
  asked: AskedTime,
  beam: Beam,
  record: BeamRecord,
  { findings, picture }: BeamDiagnosis,
  site: Site,
  clock: WallClock,
): BeamExplanationJson {
  const told = beamMoment(asked, { beam, record, findings, offs: picture?.excursions ?? [] }, site, clock);
  const { recurs, signal, causes, cautions } = momentWords(beam, told, clock, record.intervalSeconds);
  const [first, second] = told.causes;
  const rivals = second === undefined ? findings : told.causes.map(({ finding }) => finding);
  return {
    id: beam.id,
    moment: Number.isNaN(told.moment) ? null : iso(told.moment),
    state: told.state ?? null,
    obscuration: out(told.obscuration),
    signal: told.course === undefined ? null : courseJson(told.course),
    signals: told.signals.map(({ time, state }) => ({ time: iso(time), state })),
    recurs: recurrenceJson(told.recurs, told.weekday, told.timeOfDay),
    quiet: isQuiet(told),
    causes: told.causes.map(({ finding, moments }) => ({
      cause: finding.cause,
      days: moments.length,
      finding: findingJson(finding),
    })),
    unnamedDays: told.unnamed.length,
    runnerUp: first === undefined ? null : (secondCause(first.finding, rivals).runnerUp ?? null),
    action: actionOf(told.causes.map(({ finding }) => finding)),
    settles: first?.finding.settles ?? null,
    words: { recurs, signal, causes },
    cautions,
    assumed: [...beam.assumed, ...record.assumed],
  };
}

/** What to do about the first; about smoke before that. */
function actionOf(findings: readonly Finding[]): string | null {
  const [first] = findings;
  const smoke = findings.find(({ cause }) => cause === 'smoke-like');
  if (first === undefined || smoke === undefined || smoke === first) return first?.action ?? null;
  return `${smoke.action} Then, for ${first.cause}: ${first.action}`;
}

const iso = (instant: number): string => new Date(instant).toISOString();

/** A number as the JSON output has it: to two decimals, null where it is not known. */
const out = (value: number): number | null => (Number.isFinite(value) ? Number(value.toFixed(2)) : null);

const seconds = (milliseconds: number): number | null => out(milliseconds / 1000);

const clockTime = (timeOfDay: number): string => iso(timeOfDay).slice(11, 19);

const courseJson = (course: Course): CourseJson => ({
  kind: course.kind,
  start: iso(course.start),
  end: iso(course.end),
  before: out(course.before),
  after: out(course.after),
  extreme: out(course.extreme),
  extremeAt: Number.isNaN(course.extremeTime) ? null : iso(course.extremeTime),
  lengthSeconds: (course.end - course.start) / 1000,
  growthSeconds: seconds(course.growth),
  recoverySeconds: seconds(course.recovery),
  ongoing: course.open,
});

function recurrenceJson(
  recurs: ReturnType<typeof beamMoment>['recurs'],
  weekday: number | undefined,
  timeOfDay: number,
): RecurrenceJson {
  const times = recurs.days.flatMap(({ off, weekday: day }) =>
    off === undefined || (weekday !== undefined && day !== weekday) ? [] : [off],
  );
  return {
    timeOfDay: clockTime(timeOfDay),
    weekday: weekday ?? null,
    onWeekday: recurs.onWeekday,
    onOtherDays: recurs.onOthers,
    byWeekday: recurs.byWeekday,
    keepsTo: recurs.keepsTo,
    depth: out(100 * recurs.depth),
    greatestDepth: times.length === 0 ? null : out(100 * Math.max(...times.map(({ depth }) => depth))),
    lengthSeconds: seconds(recurs.length),
    times: times.map(({ start, end, depth }) => ({ start: iso(start), end: iso(end), depth: out(100 * depth) ?? 0 })),
  };
}
