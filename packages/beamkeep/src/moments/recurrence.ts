import { minute } from '../columns/index.js';
import { binomialInterval, median } from '../statistics/index.js';
import type { Off } from './course.js';
import { instantOnDay, type WallClock, weekdayOf } from './wallClock.js';

/** How often something was seen: so many days of so many that were looked at. */
export interface DayCount {
  readonly shown: number;
  readonly of: number;
}

/** A time of day on one calendar day of the log. */
export interface DayMoment<T extends Off> {
  /** 1 Monday to 7 Sunday. */
  readonly weekday: number;
  /** When the clock shows that time [ms]. */
  readonly moment: number;
  /** The deepest stretch off the usual course there. */
  readonly off: T | undefined;
}

/** What recurs at a time of day. */
export interface Recurrence<T extends Off> {
  /** The days of the log that hold samples at that time, in order. */
  readonly days: readonly DayMoment<T>[];
  /** Counts by day of the week, Monday first. */
  readonly byWeekday: readonly DayCount[];
  /** On the day of the week that is asked about, and on all others; on all days where none is. */
  readonly onWeekday: DayCount;
  readonly onOthers: DayCount;
  /** `weekday`: surely more often on that day than on others; `hour`: on three days or more; `seldom`; `never`. */
  readonly keepsTo: 'weekday' | 'hour' | 'seldom' | 'never';
  /** Of the days asked about that show it, median: depth [share of clean air] and length [ms]; NaN of none. */
  readonly depth: number;
  readonly length: number;
}

/** How far from the time a stretch may begin to belong to it [ms], two samples at least. */
export const reachOfTime = (intervalSeconds: number): number => Math.max(30 * minute, 2000 * intervalSeconds || 0);

/** Whether a stretch belongs to a moment: it covers it, or begins near it. */
const belongs = ({ start, end }: Off, moment: number, reach: number): boolean =>
  (start <= moment && end >= moment) || Math.abs(start - moment) <= reach;

/**
 * What recurs at a time of day.
 *
 * @param asked time of day [ms since midnight], day of the week (undefined: any), whether light is lost (1) or gained
 * @param offs the stretches off the usual course, in order of time
 * @param log its first and last sample [ms], usual interval [s], and whether it holds a sample at a moment
 * @param clock of the site
 */
export function recurrence<T extends Off>(
  {
    timeOfDay,
    weekday,
    sign,
  }: { readonly timeOfDay: number; readonly weekday: number | undefined; readonly sign: 1 | -1 },
  offs: readonly T[],
  log: {
    readonly from: number;
    readonly to: number;
    readonly intervalSeconds: number;
    holds(moment: number): boolean;
  },
  clock: WallClock,
): Recurrence<T> {
  const reach = reachOfTime(log.intervalSeconds);
  const alike = offs.filter((off) => off.sign === sign);
  const days: DayMoment<T>[] = [];
  let at = 0;
  for (let number = clock.dayNumber(log.from); number <= clock.dayNumber(log.to); number++) {
    const moment = instantOnDay(clock, number, timeOfDay);
    if (moment < log.from || moment > log.to || !log.holds(moment)) continue;
    let deepest: T | undefined;
    while (at < alike.length && (alike[at] as T).end < moment - reach) at++;
    for (let k = at; k < alike.length && (alike[k] as T).start <= moment + reach; k++) {
      const off = alike[k] as T;
      if (belongs(off, moment, reach) && !(off.depth <= (deepest?.depth ?? 0))) deepest = off;
    }
    days.push({ weekday: weekdayOf(number), moment, off: deepest });
  }
  const count = (wanted: (day: DayMoment<T>) => boolean): DayCount => {
    const own = days.filter(wanted);
    return { shown: own.filter(({ off }) => off !== undefined).length, of: own.length };
  };
  const isAsked = (day: DayMoment<T>) => weekday === undefined || day.weekday === weekday;
  const onWeekday = count(isAsked);
  const onOthers = count((day) => !isAsked(day));
  const shown = days.flatMap((day) => (isAsked(day) && day.off !== undefined ? [day.off] : []));
  return {
    days,
    byWeekday: [1, 2, 3, 4, 5, 6, 7].map((each) => count((day) => day.weekday === each)),
    onWeekday,
    onOthers,
    keepsTo: keepsTo(onWeekday, onOthers),
    depth: median(shown.map(({ depth }) => depth)),
    length: median(shown.map(({ start, end }) => end - start)),
  };
}

/** A day of the week is kept to where its 95 % interval lies above that of the others. */
function keepsTo(own: DayCount, others: DayCount): Recurrence<Off>['keepsTo'] {
  const all = own.shown + others.shown;
  if (all === 0) return 'never';
  const least = binomialInterval(own.shown, own.of).low;
  if (others.of > 0 && least > binomialInterval(others.shown, others.of).high) return 'weekday';
  return all >= 3 ? 'hour' : 'seldom';
}
