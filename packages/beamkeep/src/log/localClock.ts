import { fromEpochMilliseconds, toZonedDateTimeISO } from 'temporal-polyfill/fns/Instant';
import { create, toZonedDateTime } from 'temporal-polyfill/fns/PlainDateTime';
import {
  addMilliseconds,
  getTimeZoneTransition,
  offsetNanoseconds,
  type Record as ZonedTime,
} from 'temporal-polyfill/fns/ZonedDateTime';

/*
 * From what a wall clock showed to the instant. Between two changes of a zone's clocks the difference is fixed, so it
 * is worked out once a stretch, and a line costs two comparisons. Where the clocks go forward an hour does not exist,
 * where they go back one exists twice; such a stretch has a kind of its own.
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

const local = (clock: number) => {
  const date = new Date(clock);
  return create(
    date.getUTCFullYear(),
    date.getUTCMonth() + 1,
    date.getUTCDate(),
    date.getUTCHours(),
    date.getUTCMinutes(),
    date.getUTCSeconds(),
    date.getUTCMilliseconds(),
  );
};

const offsetOf = (time: ZonedTime): number => offsetNanoseconds(time) / 1e6;
const offsetAt = (instant: number, zone: string): number =>
  offsetOf(toZonedDateTimeISO(fromEpochMilliseconds(instant), zone));

/**
 * The stretch around a clock reading.
 *
 * @param zone IANA zone of the clock
 * @param clock what it showed, as if it stood in UTC [ms]
 */
export function clockStretch(zone: string, clock: number): ClockStretch {
  const reading = local(Math.floor(clock));
  const early = toZonedDateTime(reading, zone, { disambiguation: 'earlier' });
  const late = toZonedDateTime(reading, zone, { disambiguation: 'later' });
  if (early.epochMilliseconds === late.epochMilliseconds) return plainStretch(early, zone);
  // Both lie around the change: shown twice where both show the reading, skipped where neither does.
  const change = getTimeZoneTransition(early, 'next');
  if (change === null) return plainStretch(early, zone);
  const instant = change.epochMilliseconds;
  const before = offsetAt(instant - 1, zone);
  const after = offsetOf(change);
  return before > after
    ? { from: instant + after, to: instant + before, offset: before, kind: 'doubled', repeat: before - after }
    : { from: instant + before, to: instant + after, offset: before, kind: 'skipped', repeat: 0 };
}

function plainStretch(time: ZonedTime, zone: string): ClockStretch {
  const offset = offsetOf(time);
  const last = getTimeZoneTransition(addMilliseconds(time, 1), 'previous');
  const next = getTimeZoneTransition(time, 'next');
  const edge = (change: ZonedTime | null, side: number): number => {
    if (change === null) return side * Number.POSITIVE_INFINITY;
    const instant = change.epochMilliseconds;
    const before = offsetAt(instant - 1, zone);
    const after = offsetOf(change);
    return instant + (side < 0 ? Math.max(before, after) : Math.min(before, after));
  };
  return { from: edge(last, -1), to: edge(next, 1), offset, kind: 'plain', repeat: 0 };
}
