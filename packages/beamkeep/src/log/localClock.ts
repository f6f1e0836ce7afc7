import { Temporal } from 'temporal-polyfill';

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
  return new Temporal.PlainDateTime(
    date.getUTCFullYear(),
    date.getUTCMonth() + 1,
    date.getUTCDate(),
    date.getUTCHours(),
    date.getUTCMinutes(),
    date.getUTCSeconds(),
    date.getUTCMilliseconds(),
  );
};

const offsetOf = (time: Temporal.ZonedDateTime): number => time.offsetNanoseconds / 1e6;

/**
 * The stretch around a clock reading.
 *
 * @param zone IANA zone of the clock
 * @param clock what it showed, as if it stood in UTC [ms]
 */
export function clockStretch(zone: string, clock: number): ClockStretch {
  const reading = local(Math.floor(clock));
  const early = reading.toZonedDateTime(zone, { disambiguation: 'earlier' });
  const late = reading.toZonedDateTime(zone, { disambiguation: 'later' });
  if (early.epochMilliseconds === late.epochMilliseconds) return plainStretch(early);
  // Both lie around the change: shown twice where both show the reading, skipped where neither does.
  const change = early.getTimeZoneTransition('next');
  if (change === null) return plainStretch(early);
  const instant = change.epochMilliseconds;
  const before = offsetOf(Temporal.Instant.fromEpochMilliseconds(instant - 1).toZonedDateTimeISO(zone));
  const after = offsetOf(change);
  return before > after
    ? { from: instant + after, to: instant + before, offset: before, kind: 'doubled', repeat: before - after }
    : { from: instant + before, to: instant + after, offset: before, kind: 'skipped', repeat: 0 };
}

function plainStretch(time: Temporal.ZonedDateTime): ClockStretch {
  const offset = offsetOf(time);
  const last = time.add({ milliseconds: 1 }).getTimeZoneTransition('previous');
  const next = time.getTimeZoneTransition('next');
  const edge = (change: Temporal.ZonedDateTime | null, side: number): number => {
    if (change === null) return side * Number.POSITIVE_INFINITY;
    const instant = change.epochMilliseconds;
    const before = offsetOf(Temporal.Instant.fromEpochMilliseconds(instant - 1).toZonedDateTimeISO(time.timeZoneId));
    const after = offsetOf(change);
    return instant + (side < 0 ? Math.max(before, after) : Math.min(before, after));
  };
  return { from: edge(last, -1), to: edge(next, 1), offset, kind: 'plain', repeat: 0 };
}
