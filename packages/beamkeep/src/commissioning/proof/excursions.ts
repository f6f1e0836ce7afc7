import type { Span } from '../../columns/index.js';
import { blockedFrom, cleanDrift } from '../../numbers/index.js';
import { reached } from '../../response/index.js';
import { median, robustSpread } from '../../statistics/index.js';

/** Obscuration as the equipment sees it, in order of time, none missing. */
export interface TestObscuration {
  /** [ms since 1970-01-01 UTC] */
  readonly time: Float64Array;
  /** [%] */
  readonly obscuration: Float64Array;
}

/** One stay away from clean air in a logged proof. */
export interface Excursion extends Span {
  /** First sample away from clean air [ms]. */
  readonly start: number;
  /** First sample back in clean air [ms]; NaN where the log ends before. */
  readonly end: number;
  /** Largest obscuration [%]. */
  readonly largest: number;
  /** Middle of what was held: of the samples near the largest [%]. */
  readonly held: number;
  /** Middle of its last ten samples [%]: where it stands, where the log ends before it is over. */
  readonly last: number;
  /** First sample at the alarm threshold, at the fault threshold [ms]; NaN where it was never reached. */
  readonly alarmAt: number;
  readonly faultAt: number;
  /** How long it stayed at or beyond the threshold, the longest time in one go [s]. */
  readonly alarmHeldSeconds: number;
  readonly faultHeldSeconds: number;
  /** From the last sample in clean air to the first at the fault threshold [s]; NaN where there is none. */
  readonly riseSeconds: number;
}

/** The stays away from clean air of a log, and what clean air read. */
export interface Excursions {
  /** Clean air: middle of the samples before anything was done [%]. */
  readonly clean: number;
  /** Usual interval between samples [s]. */
  readonly intervalSeconds: number;
  readonly list: readonly Excursion[];
}

/** Shortest stay in clean air that parts two stays away from it [s]. */
const shortestClean = 2;

/**
 * Finds every stay away from clean air in a logged proof.
 *
 * @param test the log
 * @param beam its thresholds [%]
 * @param intervalSeconds usual interval between samples [s]
 *
 * Away means further than a clean reading may wander, and further than five times the noise.
 */
export function excursions(
  { time, obscuration }: TestObscuration,
  { alarmThreshold, faultThreshold }: { readonly alarmThreshold: number; readonly faultThreshold: number },
  intervalSeconds: number,
): Excursions {
  const bound = Math.min(blockedFrom.value, alarmThreshold / 2);
  const first = obscuration.findIndex((value) => value >= bound);
  const quiet = obscuration.subarray(0, first < 0 ? obscuration.length : first);
  const clean = quiet.length > 0 ? median(quiet) : 0;
  const changes = obscuration.subarray(1).map((value, row) => value - (obscuration[row] as number));
  const away = clean + Math.max(cleanDrift.value, (5 * robustSpread(changes, 0)) / Math.SQRT2 || 0);
  const spans = spansAway(time, obscuration, away, shortestClean * 1000);
  return {
    clean,
    intervalSeconds,
    list: spans.map((span) => measured(span, time, obscuration, { alarmThreshold, faultThreshold }, bound)),
  };
}

function spansAway(time: Float64Array, obscuration: Float64Array, away: number, shortest: number): Span[] {
  const spans: { from: number; to: number }[] = [];
  for (let row = 0; row < obscuration.length; row++) {
    if (!((obscuration[row] as number) > away)) continue;
    const last = spans.at(-1);
    if (last && (last.to === row || (time[row] as number) - (time[last.to] as number) < shortest)) last.to = row + 1;
    else spans.push({ from: row, to: row + 1 });
  }
  return spans;
}

function measured(
  { from, to }: Span,
  time: Float64Array,
  obscuration: Float64Array,
  { alarmThreshold, faultThreshold }: { alarmThreshold: number; faultThreshold: number },
  bound: number,
): Excursion {
  const values = obscuration.subarray(from, to);
  const largest = values.reduce((most, value) => Math.max(most, value), Number.NEGATIVE_INFINITY);
  const held = median(values.filter((value) => value >= 0.9 * largest));
  const first = (threshold: number) => {
    const row = values.findIndex((value) => reached(value, threshold));
    return row < 0 ? Number.NaN : (time[from + row] as number);
  };
  const faultAt = first(faultThreshold);
  let clearRow = from;
  for (let row = from; row < to && (time[row] as number) < faultAt; row++)
    if ((obscuration[row] as number) < bound) clearRow = row + 1;
  const clearAt = clearRow > 0 ? (time[clearRow - 1] as number) : Number.NaN;
  return {
    from,
    to,
    start: time[from] as number,
    end: to < time.length ? (time[to] as number) : Number.NaN,
    largest,
    held,
    last: median(values.subarray(-10)),
    alarmAt: first(alarmThreshold),
    faultAt,
    alarmHeldSeconds: longestAt(alarmThreshold, time, obscuration, { from, to }),
    faultHeldSeconds: longestAt(faultThreshold, time, obscuration, { from, to }),
    riseSeconds: (faultAt - clearAt) / 1000,
  };
}

/** Longest time in one go at or beyond a threshold [s]: up to the first sample that is not. */
function longestAt(threshold: number, time: Float64Array, obscuration: Float64Array, { from, to }: Span): number {
  let longest = 0;
  let since = Number.NaN;
  for (let row = from; row <= to && row < time.length; row++) {
    const at = time[row] as number;
    if (row < to && reached(obscuration[row] as number, threshold)) {
      if (Number.isNaN(since)) since = at;
      longest = Math.max(longest, at - since);
    } else if (!Number.isNaN(since)) {
      longest = Math.max(longest, at - since);
      since = Number.NaN;
    }
  }
  return longest / 1000;
}
