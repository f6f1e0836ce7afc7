import { day } from '../columns/index.js';
import { clockChanges } from './clockChanges.js';
import { zoneOffset } from './zoneOffset.js';

/*
 * From what a wall clock showed to the instant. Between two changes of a zone's clocks the difference is fixed, so it
 * is worked out once a stretch, and a line of a log costs two comparisons. Where the clocks go forward an hour does not
 * exist, where they go back one exists twice; such a stretch has a kind of its own.
 *
 *     instants   ....before....|....after....
 *     forward    ..............|skipped|......     the clock jumps over `skipped`
 *     back       ......|doubled|..............     the clock shows `doubled` on both sides of the change
 */

/** A stretch of clock readings that are all turned into instants in the same way. */
export interface ClockStretch {
  /** First clock reading of the stretch, as if it stood in UTC [ms]. */
  readonly from: number;
  /** First clock reading behind it [ms]. */
  readonly to: number;
  /** Taken off a clock reading to get its instant [ms]; of a doubled hour: its first time. */
  readonly offset: number;
  /** `skipped`: the clocks never showed this; `doubled`: they showed it twice. */
  readonly kind: 'plain' | 'skipped' | 'doubled';
  /** Of a doubled hour: how much later its second time is [ms]. */
  readonly repeat: number;
}

/** How far a stretch is looked for, before and behind the reading [ms]: logs run forward. */
const back = 9 * day;
const ahead = 49 * day;
/** Where no change ends a stretch, one may lie just beyond what was looked through: this much is not told [ms]. */
const margin = day;

/**
 * A stretch around a clock reading: all of it between two changes of the clocks, or, where they lie far away, the
 * weeks about it.
 *
 * @param zone IANA zone of the clock
 * @param clock what it showed, as if it stood in UTC [ms]
 */
export function clockStretch(zone: string, clock: number): ClockStretch {
  const start = Math.floor(clock) - back - margin;
  const end = Math.floor(clock) + ahead + margin;
  let offset = zoneOffset(zone, start);
  let from = start + offset + margin;
  for (const { instant, before, after } of clockChanges(zone, start, end)) {
    const first = instant + Math.min(before, after);
    const next = instant + Math.max(before, after);
    if (clock < first) return { from, to: first, offset, kind: 'plain', repeat: 0 };
    if (clock < next) {
      return before > after
        ? { from: first, to: next, offset: before, kind: 'doubled', repeat: before - after }
        : { from: first, to: next, offset: before, kind: 'skipped', repeat: 0 };
    }
    from = next;
    offset = after;
  }
  return { from, to: end + offset - margin, offset, kind: 'plain', repeat: 0 };
}
