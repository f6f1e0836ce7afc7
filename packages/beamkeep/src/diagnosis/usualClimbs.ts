import { day } from '../columns/index.js';
import { Hours, isAsLarge, isNeverOutlier, isOutlier } from './amongLike.js';
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
/** Most growths that each is compared with on either side in size: a beam that shakes has thousands. Own choice. */
const mostLooks = 3000;
/** Level from which nothing is lost: what ends there took light that had been added, and has nothing to clear. Own choice. */
const clean = 0.985;

/** A growth, measured for comparison. */
interface Known {
  readonly climb: Climb;
  /** Growth, time of growth and time to clear (natural logs; infinite where it never cleared). */
  readonly rise: number;
  readonly time: number;
  readonly clears: number;
  /** Solar time of its top and of its clearing [h]. */
  readonly at: number;
  readonly gone: number;
  readonly day: number;
  readonly alarmed: boolean;
  /** Whether the level that it left is that of clean air. */
  readonly toClean: boolean;
}

/** The growths that have several of their like on other days, none of which reached the alarm threshold. */
export function usualClimbs(view: View, growths: readonly Climb[]): Set<Climb> {
  const order = growths.map((climb) => known(view, climb)).sort((a, b) => a.rise - b.rise);
  return new Set(order.filter((one, k) => !one.alarmed && isUsual(one, k, order)).map(({ climb }) => climb));
}

function known(view: View, climb: Climb): Known {
  const { interval, clock, beam } = view;
  const { time, low, level } = view.trace;
  const top = time[climb.to] as number;
  const clears = climb.cleared < time.length ? (time[climb.cleared] as number) - top : Number.POSITIVE_INFINITY;
  return {
    climb,
    rise: Math.log(climb.rise),
    time: Math.log(climb.time + interval),
    clears: Math.log(clears + interval),
    at: solarHour(view, top),
    gone: solarHour(view, top + (Number.isFinite(clears) ? clears : 0)),
    day: Math.floor((top + clock.offset(top)) / day),
    alarmed: (low[climb.to] as number) <= 1 - beam.alarmThreshold / 100,
    toClean: (level[climb.to] as number) >= clean,
  };
}

/** Whether a growth lies amid several of its like. */
function isUsual(one: Known, k: number, order: readonly Known[]): boolean {
  const days = new Set<number>();
  let others = 0;
  let large = 0;
  const tops = new Hours();
  const ends = new Hours();
  const several = (): boolean => days.size >= leastDays && others >= leastOthers;
  const isSettled = (): boolean =>
    several() && isNeverOutlier(large) && tops.areClearlyAbout() && (one.toClean || ends.areClearlyAbout());
  for (const way of [1, -1]) {
    for (let step = 1; step <= mostLooks && !isSettled(); step++) {
      const other = order[k + way * step];
      if (other === undefined || Math.abs(other.rise - one.rise) > riseApart) break;
      if (!isLike(other, one)) continue;
      tops.add(hoursAfter(other.at, one.at));
      ends.add(hoursAfter(other.gone, one.gone));
      if (isAsLarge(other.rise, one.rise)) large++;
      days.add(other.day);
      others++;
    }
  }
  if (!several() || large < 1 || isOutlier(others, large)) return false;
  // Mist goes as it warms, dust as work ends: what is gone long before any of its like is another thing.
  return tops.areAbout() && (one.toClean || ends.areAbout());
}

/** Whether another is like a growth in pace, clearing and time of day, and came on another day. */
function isLike(other: Known, one: Known): boolean {
  if (other.alarmed || other.day === one.day || Math.abs(other.time - one.time) > timeApart) return false;
  // What never cleared is like nothing that did, unless neither left anything that could clear.
  if (!(one.clears - other.clears <= clearApart) && !(one.toClean && other.toClean)) return false;
  return Math.abs(hoursAfter(other.at, one.at)) <= hoursApart;
}
