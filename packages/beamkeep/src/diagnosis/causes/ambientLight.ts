import { median } from '../../statistics/index.js';
import type { Cause } from '../cause.js';
import type { Excursion } from '../excursions.js';
import { hoursBetween, solarHour } from '../families.js';
import type { Picture } from '../picture.js';
import { spells } from '../spells.js';
import { clockTime, counted, evidence, logistic, percent } from '../wording.js';
import { byDay, episodesOf } from './recurring.js';

/** Half of the width of the window of hours that one light keeps to through a season [h]. */
const reach = 2;

/** The hour about which most of the given hours of the day lie. */
function busiestHour(hours: readonly number[]): number {
  let best = 0;
  let most = -1;
  for (const h of hours) {
    let near = 0;
    for (const other of hours) if (hoursBetween(h, other) <= reach) near += 1 - hoursBetween(h, other) / (2 * reach);
    if (near > most) {
      most = near;
      best = h;
    }
  }
  return best;
}

/** Days between which the sun's hour hardly moves, and how many of a day's stretches are looked at: own choice. */
const fewDays = 10;
const mostOfDay = 2;
/** How near in their hours stretches of light on neighbouring days lie [h]: between simulated light and what else is sharp. */
const keepsTo = 0.15;
/**
 * How much wider apart they may lie where all such stretches of the log keep to one window of hours [h], and the share of
 * them in it from which that begins to count: clouds leave glints here and there within the hours of the sun. Own choice.
 */
const cloudy = { wider: 0.3, from: 0.7 };
/** Share of the confidence that is left where no two days lie near enough to show it: own choice. */
const unseen = 0.3;

const secondsOfHour = 3600;

/**
 * How nearly light comes back at its hour: from one day to the next that has it, the least distance between begins,
 * ends or middles [h], median. Clouds cut a stretch short at one end; they seldom move both. Undefined where no two
 * days lie near.
 */
function returnsWithin(picture: Picture, days: ReadonlyMap<number, readonly Excursion[]>): number | undefined {
  const numbers = [...days.keys()].sort((a, b) => a - b);
  const marks = (number: number): (readonly number[])[] =>
    [...(days.get(number) ?? [])]
      .sort((a, b) => b.depth - a.depth)
      .slice(0, mostOfDay)
      .map(({ start, end }) => [start, end, (start + end) / 2].map((t) => solarHour(picture.view, t)));
  const apart: number[] = [];
  for (let k = 1; k < numbers.length; k++) {
    const [before, now] = [numbers[k - 1] as number, numbers[k] as number];
    if (now - before > fewDays) continue;
    const later = marks(now);
    const distances = marks(before).flatMap((a) =>
      later.flatMap((b) => a.map((hour, i) => hoursBetween(hour, b[i] as number))),
    );
    apart.push(Math.min(...distances));
  }
  return apart.length === 0 ? undefined : median(apart);
}

/** Sun or lamps on the receiver: light that adds, at an hour that moves with the season. */
export const ambientLight: Cause = {
  word: 'ambient-light',
  meaning: 'sun or lamps on the receiver',
  shows: 'level raised, lowered (saturation) or roughened at a solar hour that moves with the season',
  action: 'Shade the receiver, or turn or move it so that no window, lamp or reflection lies in its view.',
  settles: 'Shade the window at that hour on a clear day: if the level keeps its course, it was the sun.',
  claims: (picture) => {
    const found = picture.excursions.filter(
      (e) => picture.kind.get(e) === 'light' && (e.deepSamples > 1 || e.depth > 0.04),
    );
    const hour = busiestHour(found.map((e) => solarHour(picture.view, (e.start + e.end) / 2)));
    const all = found.filter((e) => hoursBetween(solarHour(picture.view, (e.start + e.end) / 2), hour) <= reach);
    const days = byDay(picture, all);
    if (days.size < 3) return [];
    const up = all.filter((e) => e.sign === -1);
    const depth = median([...days.values()].map((of) => Math.max(...of.map((e) => e.depth))));
    const at = all.map((e) => solarHour(picture.view, (e.start + e.end) / 2));
    const apart = median(at.map((h) => hoursBetween(h, hour)));
    // By chance the window would hold its share of the day.
    const share = all.length / found.length;
    const returns = returnsWithin(picture, days);
    const near = keepsTo + cloudy.wider * Math.max(0, (share - cloudy.from) / (1 - cloudy.from));
    const confidence =
      0.97 *
      (returns === undefined ? unseen : logistic(30 * (near - returns))) *
      logistic(1.2 * (days.size - 2.6)) *
      logistic(3.5 * (depth / picture.slowLimit - 1.2)) *
      logistic(12 * (share - 0.45));
    if (confidence < 0.1) return [];
    return spells(episodesOf(days.values())).map((s) => ({
      start: s.start,
      end: s.end,
      episodes: s.episodes,
      confidence,
      severity: 'note' as const,
      summary: `The level is ${up.length * 2 >= all.length ? 'raised' : 'lowered'} by ${percent(depth)} % about ${clockTime(hour)} solar time on ${counted(s.episodes.length, 'day')}: light from outside falls on the receiver.`,
      evidence: [
        evidence('change, median of the days', percent(depth), '%'),
        evidence('solar time', hour, 'h'),
        evidence('spread of the solar time', apart * secondsOfHour, 's'),
        ...(returns === undefined ? [] : [evidence('comes back within', returns * secondsOfHour, 's')]),
        evidence('days', s.episodes.length, ''),
        evidence('share of such stretches that lie about this hour', share, ''),
        evidence('share of raised levels', up.length / all.length, ''),
      ],
    }));
  },
};
