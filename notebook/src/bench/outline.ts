import { rowAt, type Trace } from 'beamkeep/columns';

/*
 * A line of bounded length through any number of samples. The window is cut into buckets of equal time and the least
 * and the greatest sample of each are kept, in the order in which they came: no dip is lost, however short. (Choosing
 * points by the area of triangles loses them.) Where fewer rows than buckets are in sight, every row is drawn.
 *
 * A stretch without samples breaks the line with NaN.
 */

/** Points of a line: rising instants and levels, NaN where the line breaks. */
export interface Outline {
  /** [ms since 1970 UTC] */
  readonly time: Float64Array;
  /** Share of clean air. */
  readonly level: Float64Array;
}

/** A stretch without samples that is longer than so many intervals is drawn as a gap. */
export const gapIntervals = 5;

/**
 * The outline of a trace within a window, and the nearest row on either side of it.
 *
 * @param trace the beam's trace
 * @param from start of the window [ms]
 * @param to end of the window [ms], after `from`
 * @param buckets how many pairs of least and greatest at most, 1 or more
 * @param gap longest stretch without samples that is drawn through [ms]; Infinity where a value holds until the next
 */
export function outline(trace: Trace, from: number, to: number, buckets: number, gap: number): Outline {
  const first = Math.max(0, rowAt(trace.time, from) - 1);
  const last = Math.min(trace.time.length, rowAt(trace.time, to) + 1);
  const points = new Points();
  if (last - first <= buckets) everyRow(trace, first, last, gap, points);
  else bucketed(trace, first, last, { from, width: (to - from) / buckets, gap }, points);
  return points.outline();
}

/** Each single sample as a point; each quiet minute as a point with the stroke of its range. */
function everyRow(trace: Trace, first: number, last: number, gap: number, points: Points): void {
  for (let row = first; row < last; row++) {
    const time = trace.time[row] as number;
    const level = trace.level[row] as number;
    if (row > first && time - (trace.until[row - 1] as number) > gap) points.gap();
    points.add(time, level);
    if ((trace.count[row] as number) === 1) continue;
    const until = trace.until[row] as number;
    const middle = (time + until) / 2;
    points.add(middle, trace.low[row] as number);
    points.add(middle, trace.high[row] as number);
    points.add(until, level);
  }
}

interface Grid {
  readonly from: number;
  readonly width: number;
  readonly gap: number;
}

function bucketed(trace: Trace, first: number, last: number, { from, width, gap }: Grid, points: Points): void {
  const breakAfter = Math.max(gap, width);
  let bucket = Number.NEGATIVE_INFINITY;
  let low = Number.NaN;
  let lowAt = 0;
  let high = Number.NaN;
  let highAt = 0;
  const flush = (): void => {
    if (Number.isNaN(low)) return;
    if (lowAt <= highAt) points.add(lowAt, low);
    points.add(highAt, high);
    if (lowAt > highAt) points.add(lowAt, low);
    low = Number.NaN;
  };
  for (let row = first; row < last; row++) {
    const time = trace.time[row] as number;
    const broken = row > first && time - (trace.until[row - 1] as number) > breakAfter;
    const here = Math.floor((time - from) / width);
    if (here !== bucket || broken) flush();
    if (broken) points.gap();
    bucket = here;
    const least = trace.low[row] as number;
    const greatest = trace.high[row] as number;
    if (Number.isNaN(low)) {
      low = least;
      high = greatest;
      lowAt = time;
      highAt = time;
      continue;
    }
    if (least < low) {
      low = least;
      lowAt = time;
    }
    if (greatest > high) {
      high = greatest;
      highAt = time;
    }
  }
  flush();
}

/** Points being gathered. */
class Points {
  readonly #time: number[] = [];
  readonly #level: number[] = [];

  add(time: number, level: number): void {
    this.#time.push(time);
    this.#level.push(level);
  }

  gap(): void {
    this.add(this.#time.at(-1) ?? 0, Number.NaN);
  }

  outline(): Outline {
    return { time: Float64Array.from(this.#time), level: Float64Array.from(this.#level) };
  }
}
