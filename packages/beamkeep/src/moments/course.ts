import { hour, minute, rowAt, type Trace } from '../columns/index.js';
import { median, medianAbsoluteDeviation } from '../statistics/index.js';

/** A stretch in which the level stands off its usual course, as the diagnosis measures them. */
export interface Off {
  /** First and last sample [ms]. */
  readonly start: number;
  readonly end: number;
  /** 1 where light was lost, -1 where the level stood above its usual course. */
  readonly sign: 1 | -1;
  /** Greatest depth, share of clean air. */
  readonly depth: number;
  /** Whether the log ends before the level came back. */
  readonly open: boolean;
}

/** What the signal did about a moment. Obscurations in [%], NaN where no sample tells. */
export interface Course {
  /** `loss`, `gain`: off its usual course for a while; `step`: another level after than before; `steady`: neither. */
  readonly kind: 'loss' | 'gain' | 'step' | 'steady';
  /** The stretch [ms]; of `step` and `steady`: what was looked at. */
  readonly start: number;
  readonly end: number;
  /** Before the stretch, median. */
  readonly before: number;
  /** After the stretch, median. */
  readonly after: number;
  /** Furthest from what was before, and when [ms]. */
  readonly extreme: number;
  readonly extremeTime: number;
  /** From 10 to 90 % of the way there [ms]: no longer than that, where two samples span it. */
  readonly growth: number;
  /** From 90 back to 10 % [ms]; NaN where the log does not show it. */
  readonly recovery: number;
  /** Whether the log ends before the level came back. */
  readonly open: boolean;
}

/** How long before and after a stretch its surroundings are looked at [ms], ten samples at least. */
const beside = 30 * minute;
/** A step is told from this much of clean air [share], three times the spread of the samples at least. */
const leastStep = 0.015;

/**
 * What the signal did about a moment.
 *
 * @param trace of the beam
 * @param moment the moment [ms]
 * @param off the stretch off the usual course that lies there; none where the level kept it
 * @param intervalSeconds usual interval between samples [s]
 */
export function courseAbout(trace: Trace, moment: number, off: Off | undefined, intervalSeconds: number): Course {
  const margin = Math.max(beside, 10_000 * intervalSeconds);
  const start = off?.start ?? moment - margin;
  const end = off?.end ?? moment + margin;
  const before = off === undefined ? levels(trace, start, moment) : levels(trace, start - margin, start);
  const after = off === undefined ? levels(trace, moment, end) : levels(trace, end + 1, end + margin);
  const [usual, then] = [median(before), median(after)];
  const base = Number.isNaN(usual) ? then : usual;
  const change = Math.abs(then - usual);
  const step =
    off === undefined &&
    change >= leastStep &&
    change >= 3 * Math.max(medianAbsoluteDeviation(before), medianAbsoluteDeviation(after));
  const kind = off === undefined ? (step ? 'step' : 'steady') : off.sign === 1 ? 'loss' : 'gain';
  const way = step ? (then < usual ? 1 : -1) : (off?.sign ?? 1);
  const away = (row: number): number => way * (base - (trace.level[row] as number));
  const first = rowAt(trace.until, start);
  let peak = first;
  let row = first;
  for (; row < trace.time.length && (trace.time[row] as number) <= end; row++)
    if (!(away(row) <= away(peak))) peak = row;
  const unmoved = { extreme: Number.NaN, extremeTime: Number.NaN, growth: Number.NaN, recovery: Number.NaN };
  const moved = () => ({
    extreme: 100 * (1 - (trace.level[peak] ?? Number.NaN)),
    extremeTime: trace.time[peak] ?? Number.NaN,
    ...edgesOf(trace, { peak, first, last: row - 1, from: start - margin, to: end + 6 * hour, away }),
  });
  return {
    kind,
    start,
    end,
    before: 100 * (1 - usual),
    after: 100 * (1 - then),
    ...(kind === 'steady' ? unmoved : moved()),
    open: off?.open ?? false,
  };
}

/** Levels of the samples from one instant to another, the second left out. */
const levels = ({ time, level }: Trace, from: number, to: number): Float64Array =>
  level.subarray(rowAt(time, from), rowAt(time, to));

interface Hump {
  readonly peak: number;
  readonly first: number;
  readonly last: number;
  /** How far to look for what was before and after [ms]. */
  readonly from: number;
  readonly to: number;
  /** How far a row is from what was before. */
  away(row: number): number;
}

/** How long the way there and the way back took, from a tenth to nine tenths. */
function edgesOf(
  { time, until }: Trace,
  { peak, first, last, from, to, away }: Hump,
): { readonly growth: number; readonly recovery: number } {
  const most = away(peak);
  let deep = Math.min(first, peak);
  while (deep < peak && away(deep) < 0.9 * most) deep++;
  let shallow = deep;
  while (shallow > 0 && (time[shallow] as number) >= from && away(shallow) > 0.1 * most) shallow--;
  let late = Math.max(last, peak);
  while (late > peak && away(late) < 0.9 * most) late--;
  let back = late;
  while (back < time.length && (time[back] as number) <= to && away(back) > 0.1 * most) back++;
  const came = back < time.length && away(back) <= 0.1 * most;
  return {
    growth:
      shallow < deep && away(shallow) <= 0.1 * most ? (time[deep] as number) - (until[shallow] as number) : Number.NaN,
    recovery: came && back > late ? (time[back] as number) - (until[late] as number) : Number.NaN,
  };
}
