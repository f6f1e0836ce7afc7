import { hour, minute } from '../../columns/index.js';
import { median } from '../../statistics/index.js';
import type { Cause } from '../cause.js';
import type { Excursion } from '../excursions.js';
import { hoursBetween } from '../families.js';
import type { Picture } from '../picture.js';
import { spells } from '../spells.js';
import { clockTime, counted, evidence, logistic, percent } from '../wording.js';
import { type Puffs, puffs } from './puffs.js';
import { agreement, byDay, daysOf, episodesOf, keepsToTheWeek, meanHour, recent } from './recurring.js';
import { shakingOrNoise } from './roughStretches.js';

/** How far from the middle of the work's hours a dip may lie [h]: half of a long shift. Own choice. */
const ofWork = 6;
/** Dips of few days that it takes where each of them may be smoke: a fire or two is no work. Own choice. */
const moreThanFires = 4;

/**
 * The work's dips by local day: those taken for dust, and those that cannot be told from smoke but lie in the same hours
 * of several days. The latter are told as smoke as well: this only stands beside it.
 */
function dipsOfWork(picture: Picture): Map<number, Excursion[]> {
  const dust = daysOf(picture, 'dust');
  const smoke = picture.excursions.filter((e) => picture.kind.get(e) === 'smoke');
  const own = dust.size >= 2 ? [...dust.values()].flat() : [...[...dust.values()].flat(), ...smoke];
  const hourOf = (e: Excursion): number => picture.view.clock.hourOfDay((e.start + e.end) / 2);
  const middle = meanHour(own.map(hourOf));
  const near = smoke.filter((e) => hoursBetween(hourOf(e), middle) <= ofWork);
  const days = byDay(
    picture,
    [...[...dust.values()].flat(), ...near].sort((a, b) => a.start - b.start),
  );
  const dips = [...days.values()].reduce((sum, of) => sum + of.length, 0);
  return days.size >= 2 && (dust.size >= 2 || dips >= moreThanFires) ? days : new Map();
}

/** Dips a day from which work may go on round the clock. Own choice. */
const roundTheClock = 1.5;

/** How much days keep to the week from which it is no chance: one time in seventeen it is. Own choice. */
const byChance = 3.5;

/** Interval of samples from which the shape of a puff hardly shows [ms]: five minutes, less what jitters. Own choice. */
const hidesShape = 4.5 * minute;

/**
 * How clearly dips are the work's, 0 to 1: uneven puffs that come quicker than they go, with no rise above the usual level
 * beside them, at the times of work. The weights are a logistic regression on the dips of 7,800 simulated beams; how many
 * days told nothing more.
 *
 * @param unevenness of a dip, median
 * @param rises stretches of raised level as large, for each dip
 * @param habits what the habits of work speak for
 */
const clearness = ({ steepness, lingers }: Puffs, unevenness: number, rises: number, habits: number): number =>
  logistic(
    1.25 * Math.max(0, Math.min(3, steepness)) +
      1.75 * Math.max(-1, Math.min(1.5, lingers)) +
      2.8 * Math.min(1.5, unevenness) +
      habits -
      1.1 * Math.log1p(rises) -
      2.15,
  );

/**
 * What the habits of work speak for: days of the week, and several dips a day where the shape of one hardly shows, since
 * sun, mist and heat come once (its weight fits the dips of 5,700 other simulated beams). Work that shakes the beam has them
 * as well, and its dips are more often of that: of 37 of those beams that shake, 12 stood in dust. How much
 * that speaks against it is an own choice.
 *
 * @param week how much the days keep to days of the week
 */
const habitsOfWork = (picture: Picture, week: number, dipsADay: number): number =>
  shakingOrNoise(picture).shaking.length > 0
    ? -0.6
    : 0.15 * Math.max(0, Math.min(3, week - byChance)) + (picture.view.interval >= hidesShape ? Math.log(dipsADay) : 0);

/** How near its middle a night's mist lies to the dips [h]. Own choice. */
const withMist = 5;

/** How much speaks against work where mist comes in the same hours on many more days: these dips are more of it. */
function moreMist(picture: Picture, hours: readonly number[], days: number): number {
  const middle = meanHour(hours);
  const nights = [...daysOf(picture, 'film').values()].filter((of) =>
    of.some((e) => hoursBetween(picture.view.clock.hourOfDay((e.start + e.end) / 2), middle) <= withMist),
  );
  return Math.log(Math.max(1, nights.length / days));
}

/** Dust, steam or exhaust from work: ragged partial dips in working hours. */
export const processAerosol: Cause = {
  word: 'process-aerosol',
  meaning: 'dust, steam or exhaust from work',
  shows: 'partial dips in working hours, repeated on working days, ragged',
  otherBeams: 'show it too',
  action:
    'Find the work that goes on at these hours; extract its dust or steam, or move the beam. Do not raise the threshold to be rid of it.',
  settles: 'Stop that work for a day, or watch one: if the dips go with the work, it is the cause.',
  claims: (picture) => {
    const days = dipsOfWork(picture);
    if (days.size === 0) return [];
    const all = [...days.values()].flat();
    const depth = median([...days.values()].map((of) => Math.max(...of.map((e) => e.depth))));
    const hours = all.map((e) => picture.view.clock.hourOfDay((e.start + e.end) / 2));
    const first = Math.min(...hours);
    const last = Math.max(...hours);
    const kept = agreement(hours);
    const rises = picture.excursions.filter((e) => e.sign === -1 && e.depth > 0.4 * depth).length / all.length;
    const shape = puffs(picture, days.values());
    const unevenness = median(all.map((e) => e.unevenness));
    const { clock, from, to } = picture.view;
    const [firstDay, lastDay] = [clock.dayNumber(from), clock.dayNumber(to)];
    const week = keepsToTheWeek(new Set(days.keys()), firstDay, lastDay);
    const dipsADay = all.length / days.size;
    // Work round the clock keeps to no hours, but to nearly every day.
    const steady = dipsADay >= roundTheClock ? days.size / (lastDay - firstDay + 1) : 0;
    const habits = habitsOfWork(picture, week, dipsADay) - moreMist(picture, hours, days.size);
    const confidence =
      0.97 * clearness(shape, unevenness, rises, habits) * logistic(12 * (Math.max(kept, steady) - 0.25));
    if (confidence < 0.05) return [];
    return spells(episodesOf(days.values())).map((s) => ({
      start: s.start,
      end: s.end,
      episodes: s.episodes,
      confidence,
      severity: recent(picture, s.end, 14) && depth * 100 > picture.view.beam.alarmThreshold / 2 ? 'watch' : 'note',
      summary: `Ragged dips of ${percent(depth)} % between ${clockTime(first)} and ${clockTime(last)} on ${counted(s.episodes.length, 'day')}, as dust or steam from work.`,
      evidence: [
        evidence('deepest of a day, median', percent(depth), '%'),
        evidence('dips a day', dipsADay, ''),
        evidence('days', s.episodes.length, ''),
        evidence('agreement of the hours, 0 to 1', kept, ''),
        evidence('length of a dip, median', median(all.map((e) => e.end - e.start)) / hour, 'h'),
        evidence('unevenness of a dip over its depth, median', unevenness, ''),
        evidence('time to clear over time to come, median', Math.exp(shape.lingers), 'times'),
        evidence('steps up steeper than steps down, over chance', shape.steepness, 'times'),
        evidence('preference for days of the week, 2.3 by chance', week, ''),
      ],
    }));
  },
};
