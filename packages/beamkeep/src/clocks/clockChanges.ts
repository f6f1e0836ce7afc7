import { day } from '../columns/index.js';
import { zoneOffset } from './zoneOffset.js';

/** The clocks of a zone are put forward or back. */
export interface ClockChange {
  /** First instant of the new offset [ms since 1970-01-01 UTC]. */
  readonly instant: number;
  /** What the clocks add to UTC before and from then on [ms]. */
  readonly before: number;
  readonly after: number;
}

/** Two changes lie further apart: the closest that undo each other are those about a month of fasting. */
const stride = 10 * day;

/**
 * Every change of a zone's clocks behind `from`, up to and with `to`, in order of time.
 *
 * @param zone IANA zone
 * @param from instant before the stretch [ms since 1970-01-01 UTC]
 * @example clockChanges('Europe/Lisbon', Date.UTC(2027, 0, 1), Date.UTC(2028, 0, 1)).length // 2
 */
export function clockChanges(zone: string, from: number, to: number): ClockChange[] {
  const changes: ClockChange[] = [];
  let left = Math.floor(from);
  let before = zoneOffset(zone, left);
  while (left < to) {
    const right = Math.min(left + stride, Math.ceil(to));
    const after = zoneOffset(zone, right);
    if (after !== before) {
      const instant = firstOf(zone, left, right, after);
      if (instant <= to) changes.push({ instant, before, after });
    }
    left = right;
    before = after;
  }
  return changes;
}

/** The first instant with an offset that holds at `right` and not yet at `left`. */
function firstOf(zone: string, left: number, right: number, offset: number): number {
  let [without, has] = [left, right];
  while (has - without > 1) {
    const middle = Math.floor((without + has) / 2);
    if (zoneOffset(zone, middle) === offset) has = middle;
    else without = middle;
  }
  return has;
}
