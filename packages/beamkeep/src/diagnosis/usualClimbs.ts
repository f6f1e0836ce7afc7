import { day } from '../columns/index.js';
import { Hours, isAsLarge, isOutlier } from './amongLike.js';
import type { Climb } from './climb.js';
import { hoursAfter, solarHour } from './families.js';
import type { View } from './view.js';

/*
 * Growths that have their like on other days: puffs of the work, which run into one another in a stretch that has no
 * like itself. Each growth of a stretch is compared on its own: size, pace, time until it clears, hour of the day. How much
 * is alike is an own choice, after that of families; a growth that reached the alarm threshold is never usual.
 */

/** Likeness: growth within this factor, time of growth and time to clear within those (natural logs), and so many hours of the day. */
const riseApart = Math.log(2.5);
const timeApart = Math.log(4);
const clearApart = Math.log(4);
const hoursApart = 4;

/** Other days, and growths on them, from which a growth is usual. */
const leastDays = 2;
const leastOthers = 3;
/** Most growths that each is compared with on either side in size. */
const mostLooks = 300;

/** The growths that have several of their like on other days, none of which reached the alarm threshold. */
export function usualClimbs(view: View, growths: readonly Climb[]): Set<Climb> {
  const { time, low } = view.trace;
  const alarm = 1 - view.beam.alarmThreshold / 100;
  const known = growths.map((climb) => {
    const top = time[climb.to] as number;
    const clears = climb.cleared < time.length ? (time[climb.cleared] as number) - top : Number.POSITIVE_INFINITY;
    return {
      climb,
      rise: Math.log(climb.rise),
      time: Math.log(climb.time + view.interval),
      clears: Math.log(clears + view.interval),
      at: solarHour(view, top),
      gone: solarHour(view, top + (Number.isFinite(clears) ? clears : 0)),
      day: Math.floor((top + view.clock.offset(top)) / day),
      alarmed: (low[climb.to] as number) <= alarm,
    };
  });
  const order = known.sort((a, b) => a.rise - b.rise);
  const usual = new Set<Climb>();
  order.forEach((one, k) => {
    if (one.alarmed) return;
    const days = new Set<number>();
    let others = 0;
    let large = 0;
    const tops = new Hours();
    const ends = new Hours();
    for (const way of [1, -1]) {
      for (let step = 1; step <= mostLooks; step++) {
        const other = order[k + way * step];
        if (other === undefined || Math.abs(other.rise - one.rise) > riseApart) break;
        if (other.alarmed || other.day === one.day) continue;
        if (Math.abs(other.time - one.time) > timeApart) continue;
        // What never cleared is like nothing that did.
        if (!(one.clears - other.clears <= clearApart)) continue;
        const later = hoursAfter(other.at, one.at);
        if (Math.abs(later) > hoursApart) continue;
        tops.add(later);
        ends.add(hoursAfter(other.gone, one.gone));
        if (isAsLarge(other.rise, one.rise)) large++;
        days.add(other.day);
        others++;
      }
    }
    if (days.size < leastDays || others < leastOthers || large < 1 || isOutlier(others, large)) return;
    // Mist goes as it warms, dust as work ends: what is gone long before any of its like is another thing.
    if (tops.areAbout() && ends.areAbout()) usual.add(one.climb);
  });
  return usual;
}
