import { day, hour } from '../columns/index.js';
import { median } from '../statistics/index.js';
import type { Excursion } from './excursions.js';
import type { View } from './view.js';

/*
 * Families: excursions like one another in size, length and time of day, on other days of the same log. What comes
 * again at the same hours in the same shape is work, mist or sun; what came once may be smoke.
 */

/** Likeness: depths within this factor, lengths within that one, onsets within another (natural logs); middles within so many hours of the day. */
const depthApart = Math.log(2.5);
const lengthApart = Math.log(3.5);
const onsetApart = Math.log(4);
/** Raggedness from which an excursion counts as several run together, and how much longer than its like it may be. */
const ragged = 2;
const raggedApart = Math.log(12);
const hoursApart = 4;

/** Other days on which the like must have come before an excursion counts as one of a family. Own choice. */
export const familyDays = 2;

export interface Family {
  /** Other local days with at least one excursion like this one, none of which reached the alarm threshold. */
  readonly otherDays: number;
  /** Excursions like this one on other days. */
  readonly others: number;
  /** How far from its own time of day theirs lie [h]: median; NaN without others. */
  readonly hoursApart: number;
  /** The excursions themselves. */
  readonly members: readonly Excursion[];
  /** Whether they keep to one or two days of the week, as work does and the sun does not. */
  readonly oneWeekday: boolean;
}

/** Solar time of day of an instant [h], by the site's longitude, or by the zone's clock where it is not known. */
export function solarHour(view: View, instant: number): number {
  const { longitude } = view.site;
  const local = instant + (longitude === undefined ? view.clock.offset(instant) : (longitude / 15) * hour);
  return (((local % day) + day) % day) / hour;
}

/** How much later than another a time of day lies [h], the short way round: negative for earlier. */
export const hoursAfter = (a: number, b: number): number => ((((a - b + 12) % 24) + 24) % 24) - 12;

/** Distance between two times of day [h], the short way round. */
export const hoursBetween = (a: number, b: number): number => Math.abs(hoursAfter(a, b));

/**
 * The family of each excursion.
 *
 * @param view the beam's record
 * @param excursions the beam's excursions
 * @param alarmed whether an excursion reached the alarm threshold: such a one vouches for no other
 */
export function families(
  view: View,
  excursions: readonly Excursion[],
  alarmed: (e: Excursion) => boolean,
): Map<Excursion, Family> {
  const known = excursions.map((e) => ({
    e,
    depth: Math.log(Math.max(e.depth, 1e-3)),
    length: Math.log(Math.max(e.end - e.start, view.interval) + view.interval),
    onset: Math.log(Math.min(Math.max(e.onset, view.interval), e.end - e.start + view.interval) + view.interval),
    at: solarHour(view, (e.start + e.end) / 2),
    day: Math.floor(((e.start + e.end) / 2 + view.clock.offset(e.start)) / day),
    alarmed: alarmed(e),
  }));
  // By depth, so that only neighbours in size are compared.
  const order = [...known].sort((a, b) => a.depth - b.depth);
  const result = new Map<Excursion, Family>();
  let low = 0;
  for (let k = 0; k < order.length; k++) {
    const one = order[k] as (typeof order)[number];
    while (one.depth - (order[low] as (typeof order)[number]).depth > depthApart) low++;
    const days = new Set<number>();
    const apart: number[] = [];
    const members: Excursion[] = [];
    const weekdays = new Float64Array(7);
    // The nearest in depth first, and no more than enough to know: a noisy log has thousands.
    for (let look = 2; look < 2 * mostLooks + 2 && members.length < mostMembers; look++) {
      const step = look >> 1;
      if (k - step < low && k + step >= order.length) break;
      const other = order[look & 1 ? k + step : k - step];
      if (other === undefined || (k - step < low && !(look & 1))) continue;
      if (Math.abs(other.depth - one.depth) > depthApart) continue;
      if (other === one || other.alarmed || other.e.sign !== one.e.sign || other.day === one.day) continue;
      // Dips that run into one another make a long ragged one: its like on other days may have stood apart.
      const shorter = one.e.raggedness >= ragged ? raggedApart : lengthApart;
      if (other.length - one.length > lengthApart || one.length - other.length > shorter) continue;
      if (shorter === lengthApart && Math.abs(other.onset - one.onset) > onsetApart) continue;
      const hours = hoursBetween(other.at, one.at);
      if (hours > hoursApart) continue;
      apart.push(hours);
      members.push(other.e);
      if (!days.has(other.day))
        weekdays[((other.day % 7) + 7) % 7] = (weekdays[((other.day % 7) + 7) % 7] as number) + 1;
      days.add(other.day);
    }
    result.set(one.e, {
      otherDays: days.size,
      others: apart.length,
      hoursApart: median(apart),
      members,
      oneWeekday: days.size >= 4 && busiestTwo(weekdays) >= 0.85 * days.size,
    });
  }
  return result;
}

/** Most members of a family that are looked for, and most excursions looked at for them on either side. */
const mostMembers = 60;
const mostLooks = 600;

function busiestTwo(weekdays: Float64Array): number {
  const sorted = Float64Array.from(weekdays).sort();
  return (sorted[6] as number) + (sorted[5] as number);
}
