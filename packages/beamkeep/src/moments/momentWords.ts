import { minute } from '../columns/index.js';
import type { Beam } from '../site/index.js';
import { weekdays } from './askedTime.js';
import type { BeamMoment, CauseThen } from './beamMoment.js';
import type { Course, Off } from './course.js';
import type { Told } from './covering.js';
import type { DayCount, Recurrence } from './recurrence.js';
import { type WallClock, wallTime, weekdayOf } from './wallClock.js';
import { lengthInWords, percent, plural, sentence } from './wording.js';

/** Dates that are told one by one. */
const mostDates = 6;

/** Paragraphs for people: what recurs, what the signal did, what it is. */
export interface MomentWords {
  readonly recurs: string;
  readonly signal: string;
  readonly causes: readonly string[];
  readonly cautions: readonly string[];
}

/** Whether anything is to be told of the moment beside a steady level. */
export const isQuiet = ({ course, recurs }: BeamMoment<Told, Off>): boolean =>
  recurs.onWeekday.shown === 0 && (course === undefined || course.kind === 'steady');

/**
 * A moment of a beam in sentences.
 *
 * @param beam its thresholds and delays
 * @param told what was made out
 * @param clock of the site
 * @param intervalSeconds usual interval between samples [s]
 */
export function momentWords(
  beam: Beam,
  told: BeamMoment<Told, Off>,
  clock: WallClock,
  intervalSeconds: number,
): MomentWords {
  return {
    recurs: recursWords(told),
    signal: signalWords(beam, told, clock),
    causes: [
      ...told.causes.map((cause) => causeWords(cause, told, clock)),
      ...(told.unnamed.length === 0 ? [] : [`Nothing was found on ${onDays(told.unnamed, clock)}.`]),
    ],
    cautions: cautionsOf(beam, told, intervalSeconds),
  };
}

function causeWords(
  { finding, moments, findings, there }: CauseThen<Told>,
  { instant, recurs }: BeamMoment<Told, Off>,
  clock: WallClock,
): string {
  const sure = finding.cause === 'smoke-like' ? 'treat as fire, ' : finding.confidence < 0.5 ? 'possible, ' : '';
  const days = instant || recurs.onWeekday.shown === 0 ? '' : `, at this hour on ${onDays(moments, clock)}`;
  const which = findings === 1 ? '' : ` in ${plural(findings, 'spell')}; of the ${there ? 'one told above' : 'last'}`;
  return `${finding.cause} (${sure}${Math.round(100 * finding.confidence)} %)${days}${which}: ${sentence(finding.summary)}`;
}

/** How many days; few are named. */
function onDays(moments: readonly number[], clock: WallClock): string {
  const names = moments.map((moment) => wallTime(clock, moment).slice(0, 10)).join(', ');
  return `${plural(moments.length, 'day')}${moments.length > mostDates ? '' : ` (${names})`}`;
}

const clockOf = (timeOfDay: number): string =>
  new Date(timeOfDay).toISOString().slice(11, timeOfDay % minute === 0 ? 16 : 19);

/** A day of the week, several of it. */
const several = (weekday: number): string => `${weekdays[weekday - 1]}s`;

const ofDays = ({ shown, of }: DayCount, days: string): string => `${shown} of ${of} ${days}`;

function recursWords({ instant, recurs, weekday, timeOfDay }: BeamMoment<Told, Off>): string {
  const { onWeekday, onOthers, keepsTo, byWeekday } = recurs;
  const what = signOf(recurs) === 1 ? 'loses light' : 'stands above its usual level';
  const about = `about ${clockOf(timeOfDay)}`;
  if (onWeekday.of + onOthers.of === 0) return `The log holds no sample ${about} on any day.`;
  if (instant && keepsTo === 'seldom') {
    const all = { shown: onWeekday.shown + onOthers.shown, of: onWeekday.of + onOthers.of };
    return `The level leaves its usual course ${about} on ${ofDays(all, 'days')}: too seldom to call it a habit.`;
  }
  const size =
    onWeekday.shown > 0
      ? ` As a rule it ${signOf(recurs) === 1 ? 'takes' : 'adds'} ${percent(100 * recurs.depth)} of clean air, for ${lengthInWords(recurs.length)}.`
      : '';
  if (weekday === undefined) {
    if (keepsTo === 'never')
      return `On none of ${plural(onWeekday.of, 'day')} does the level leave its usual course ${about}.`;
    return `The beam ${what} ${about} on ${ofDays(onWeekday, 'days')}.${busiest(byWeekday)}${size}`;
  }
  const counts = `${ofDays(onWeekday, several(weekday))} and on ${ofDays(onOthers, 'other days')}`;
  if (keepsTo === 'never')
    return `On none of ${onWeekday.of} ${several(weekday)}, nor of ${plural(onOthers.of, 'other day')}, does the level leave its usual course ${about}.`;
  const meaning =
    keepsTo === 'weekday'
      ? `: it keeps to ${several(weekday)}`
      : keepsTo === 'hour'
        ? ': no day of the week stands out'
        : ': too seldom to call it a habit';
  return `The beam ${what} ${about} on ${counts}${meaning}.${size}`;
}

const signOf = ({ days }: Recurrence<Off>): 1 | -1 => days.find(({ off }) => off !== undefined)?.off?.sign ?? 1;

/** The days of the week that hold most of it, where it keeps to one or two. */
function busiest(byWeekday: readonly DayCount[]): string {
  const all = byWeekday.reduce((sum, { shown }) => sum + shown, 0);
  const order = byWeekday
    .map(({ shown, of }, at) => ({ shown, of, name: several(at + 1) }))
    .sort((a, b) => b.shown - a.shown);
  const [first, second] = order;
  if (first === undefined || second === undefined || all < 4) return '';
  if (first.shown >= 0.8 * all) return ` Of these ${all}, ${first.shown} are ${first.name}.`;
  if (first.shown + second.shown >= 0.85 * all)
    return ` Of these ${all}, ${first.shown} are ${first.name} and ${second.shown} ${second.name}.`;
  return '';
}

function signalWords(beam: Beam, told: BeamMoment<Told, Off>, clock: WallClock): string {
  const { course, moment, obscuration, sampled } = told;
  if (course === undefined) return 'The log holds no sample at that time.';
  const when = (instant: number) => `${weekdays[weekdayOf(clock.dayNumber(instant)) - 1]} ${wallTime(clock, instant)}`;
  const now =
    sampled && !Number.isNaN(obscuration)
      ? `At ${wallTime(clock, moment).slice(11)} it stands at ${light(obscuration)}.`
      : '';
  if (course.kind === 'steady')
    return Number.isNaN(obscuration)
      ? 'The log holds no sample at that time.'
      : `About ${when(moment)} the obscuration stands steady at ${light(obscuration)}.`;
  if (course.kind === 'step')
    return `About ${when(moment)} the obscuration goes from ${light(course.before)} to ${light(course.after)} and stays there, ${fast(course)}.`;
  const way = course.kind === 'loss' ? 'grows to' : 'gives way to';
  const back = Number.isNaN(course.recovery) ? '' : `, the way back taking ${lengthInWords(course.recovery)}`;
  const sentences = [
    `${told.instant ? 'It' : 'The deepest'} begins on ${when(course.start)}: from ${known(course.before)} before, the obscuration ${way} ${light(course.extreme)} at ${wallTime(clock, course.extremeTime).slice(11)}, ${fast(course)}.`,
    course.open
      ? 'The log ends before the level is back.'
      : `It lasts ${lengthInWords(course.end - course.start)}${back}.`,
    signalsWords(beam, told, clock),
    now,
  ];
  return sentences.filter((each) => each !== '').join(' ');
}

const light = (obscuration: number): string =>
  obscuration < 0 ? `a level ${percent(-obscuration)} above clean air` : percent(obscuration);

const known = (obscuration: number): string => (Number.isNaN(obscuration) ? 'an unknown level' : light(obscuration));

const fast = ({ growth }: Course): string =>
  Number.isNaN(growth)
    ? 'how fast the log does not show'
    : `nine tenths of the way in ${lengthInWords(growth)} or less`;

function signalsWords(beam: Beam, { signals }: BeamMoment<Told, Off>, clock: WallClock): string {
  const fire = signals.find(({ state }) => state === 'fire');
  const fault = signals.find(({ state }) => state === 'fault');
  const limits = `alarm threshold ${percent(beam.alarmThreshold)} for ${beam.alarmDelay} s`;
  const said = [
    ...(fire === undefined ? [] : [`fire at ${wallTime(clock, fire.time).slice(11)}`]),
    ...(fault === undefined ? [] : [`fault at ${wallTime(clock, fault.time).slice(11)}`]),
  ];
  return said.length === 0
    ? `The settings give no signal for it (${limits}).`
    : `The settings give ${said.join(' and ')} (${limits}).`;
}

function cautionsOf(beam: Beam, told: BeamMoment<Told, Off>, intervalSeconds: number): string[] {
  const { causes, course, recurs, moment } = told;
  const smoke = causes.some(({ cause }) => cause === 'smoke-like');
  const cautions: string[] = [];
  if (smoke)
    cautions.push(
      'What cannot be told from smoke counts as fire, whatever usually comes at this hour: a fire can start in the work that makes the dust. Neither raise the threshold nor lengthen the delay to be rid of it.',
    );
  else if (recurs.onWeekday.shown >= 3 && course?.kind === 'loss')
    cautions.push(
      'That it comes again and again does not show that the next time is no fire: each time that grows past its usual size counts as one.',
    );
  if (intervalSeconds > beam.alarmDelay)
    cautions.push(
      `Samples stand ${lengthInWords(1000 * intervalSeconds)} apart, further than the alarm delay of ${beam.alarmDelay} s: what happens between them does not show.`,
    );
  const last = recurs.days.at(-1);
  if (last !== undefined && Number.isFinite(moment) && recurs.days.length < 14)
    cautions.push(
      `The log holds ${plural(recurs.days.length, 'day')} at this hour: too few to tell a habit from chance.`,
    );
  const first = causes[0]?.finding;
  if (first !== undefined && first.confidence < 0.5 && !smoke)
    cautions.push('What is only possible is no reason to leave out the look on site.');
  return cautions;
}
