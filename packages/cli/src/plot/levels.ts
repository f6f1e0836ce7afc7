import type { Trace } from 'beamkeep/columns';
import type { Clock } from '../say/times.js';

const minute = 60_000;
const hour = 60 * minute;
const day = 24 * hour;
const steps = [
  ...[1, 2, 5, 10, 15, 30].map((minutes) => minutes * minute),
  ...[1, 2, 3, 6, 12].map((hours) => hours * hour),
  ...[1, 2, 3, 5, 7, 10, 14, 28, 56, 91, 182, 364].map((days) => days * day),
];

/** A beam's log in equal stretches of time, ready to draw; NaN where a stretch holds no samples. */
export interface Levels {
  /** Instant at which the first stretch begins [ms since 1970-01-01 UTC]. */
  readonly from: number;
  /** Instant of the last sample [ms]. */
  readonly to: number;
  /** Length of a stretch [ms]. */
  readonly step: number;
  /** Least sample of each stretch, share of clean air. */
  readonly low: Float64Array;
  /** Median sample of each stretch, share of clean air, to one part in a thousand. */
  readonly middle: Float64Array;
}

/*
 * The median of a stretch is read from a histogram, so that millions of rows cost one pass: bins of a thousandth,
 * from well below no light to three times clean air; what lies beyond goes to the end bins.
 */
const floor = -0.5;
const bins = 3500;
const bin = (level: number): number => Math.min(bins - 1, Math.max(0, Math.floor((level - floor) * 1000)));
const levelOf = (index: number): number => floor + (index + 0.5) / 1000;

function middleOf(histogram: Float64Array, total: number): number {
  let seen = 0;
  for (let index = 0; index < bins; index++) {
    seen += histogram[index] ?? 0;
    if (seen * 2 >= total) return levelOf(index);
  }
  return Number.NaN;
}

/**
 * The levels of a trace in at most `columns` stretches of a round length that start at a round time of the clock;
 * undefined where there is no sample.
 */
export function levels(trace: Trace, columns: number, told: Clock): Levels | undefined {
  const first = trace.time[0];
  const last = trace.until[trace.until.length - 1];
  if (first === undefined || last === undefined) return undefined;
  const sinceMidnight = told.sinceMidnight(first);
  const startFor = (step: number) => first - (step < day ? sinceMidnight % step : sinceMidnight);
  const needed = (step: number) => Math.floor((last - startFor(step)) / step) + 1;
  const step =
    steps.find((each) => needed(each) <= columns) ?? Math.ceil((last - first + day) / (columns - 1) / day) * day;
  const from = startFor(step);
  const low = new Float64Array(needed(step)).fill(Number.NaN);
  const middle = new Float64Array(needed(step)).fill(Number.NaN);
  const histogram = new Float64Array(bins);
  let at = 0;
  let total = 0;
  const close = () => {
    if (total > 0) middle[at] = middleOf(histogram, total);
    histogram.fill(0);
    total = 0;
  };
  trace.time.forEach((time, row) => {
    const column = Math.floor((time - from) / step);
    if (column !== at) {
      close();
      at = column;
    }
    const count = trace.count[row] ?? 0;
    const index = bin(trace.level[row] ?? Number.NaN);
    histogram[index] = (histogram[index] ?? 0) + count;
    total += count;
    const least = trace.low[row] ?? Number.NaN;
    const before = low[at] ?? Number.NaN;
    low[at] = Number.isNaN(before) || least < before ? least : before;
  });
  close();
  return { from, to: last, step, low, middle };
}
