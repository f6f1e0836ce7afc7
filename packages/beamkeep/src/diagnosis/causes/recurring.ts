import type { Stretch } from '../../columns/index.js';
import type { Excursion } from '../excursions.js';
import type { Kind, Picture } from '../picture.js';

/** Excursions of one kind, by local day. */
export const daysOf = (picture: Picture, kind: Kind): Map<number, Excursion[]> =>
  byDay(
    picture,
    picture.excursions.filter((e) => picture.kind.get(e) === kind),
  );

/** Stretches by the local day in which their middle lies: a night counts with the day on which it ends. */
export function byDay<E extends Stretch>(picture: Picture, excursions: readonly E[]): Map<number, E[]> {
  const days = new Map<number, E[]>();
  for (const e of excursions) {
    const day = picture.view.clock.dayNumber((e.start + e.end) / 2);
    const of = days.get(day);
    if (of === undefined) days.set(day, [e]);
    else of.push(e);
  }
  return days;
}

/** First and last sample of each group of excursions. */
export const episodesOf = (groups: Iterable<readonly Stretch[]>): (readonly [number, number])[] =>
  [...groups].map((of) => [Math.min(...of.map((e) => e.start)), Math.max(...of.map((e) => e.end))] as const);

/** Whether a stretch reaches into the last days of the log. */
export const recent = (picture: Picture, end: number, days: number): boolean =>
  end >= picture.view.to - days * 86_400_000;

/**
 * How much some days keep to days of the week, as work does and weather does not: the root of twice the log of the
 * likelihood of a share for each day of the week over that of one share for all. Of days without a week, 2.3 by chance
 * (chi-square of six degrees of freedom), and over 3.5 one time in seventeen.
 *
 * @param days local days on which it came
 * @param first first local day of the record
 * @param last its last
 */
export function keepsToTheWeek(days: ReadonlySet<number>, first: number, last: number): number {
  const all = last - first + 1;
  const share = days.size / all;
  let gain = 0;
  for (let weekday = 0; weekday < 7; weekday++) {
    let of = 0;
    let came = 0;
    for (let d = first + weekday; d <= last; d += 7) {
      of++;
      if (days.has(d)) came++;
    }
    if (came > 0) gain += came * Math.log(came / of / share);
    if (came < of) gain += (of - came) * Math.log((1 - came / of) / (1 - share));
  }
  return Math.sqrt(2 * Math.max(0, gain));
}

/** How closely hours of the day agree: 1 all the same, 0 spread round the clock. */
export function agreement(hours: readonly number[]): number {
  const { east, north } = onTheDial(hours);
  return hours.length === 0 ? 0 : Math.hypot(east, north) / hours.length;
}

/** The middle of hours of the day, round the clock [h]. */
export function meanHour(hours: readonly number[]): number {
  const { east, north } = onTheDial(hours);
  return ((Math.atan2(north, east) / (2 * Math.PI)) * 24 + 24) % 24;
}

/** Hours of the day added up as hands of a dial of 24 h. */
function onTheDial(hours: readonly number[]): { readonly east: number; readonly north: number } {
  let east = 0;
  let north = 0;
  for (const h of hours) {
    east += Math.cos((h / 24) * 2 * Math.PI);
    north += Math.sin((h / 24) * 2 * Math.PI);
  }
  return { east, north };
}
