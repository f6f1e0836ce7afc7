import { rowAt, type Trace } from '../columns/index.js';

/** A sample may stand for a moment this many usual intervals away; beyond, the moment lies in a gap. */
const held = 5;

/**
 * Row of a trace that tells most about a moment: the last one that began before it, or else the next; -1 where the
 * nearest sample is more than five intervals away.
 *
 * @param instant the moment [ms]
 * @param intervalSeconds usual interval between samples [s]
 */
export function rowOfMoment({ time, until }: Trace, instant: number, intervalSeconds: number): number {
  const reach = held * 1000 * intervalSeconds;
  const next = rowAt(time, instant + 1);
  const last = next - 1;
  if (last >= 0 && instant - (until[last] as number) <= reach) return last;
  return next < time.length && (time[next] as number) - instant <= reach ? next : -1;
}

/** Level at a moment, share of clean air; NaN in a gap. Of a row of several samples, their median. */
export function levelAt(trace: Trace, instant: number, intervalSeconds: number): number {
  const row = rowOfMoment(trace, instant, intervalSeconds);
  return row < 0 ? Number.NaN : (trace.level[row] as number);
}

/** Lowest and highest level between two instants, both included; NaN where no sample lies between. */
export function extremes(trace: Trace, from: number, to: number): { readonly low: number; readonly high: number } {
  let [low, high] = [Number.NaN, Number.NaN];
  for (let row = rowAt(trace.until, from); row < trace.time.length && (trace.time[row] as number) <= to; row++) {
    if (!((trace.low[row] as number) >= low)) low = trace.low[row] as number;
    if (!((trace.high[row] as number) <= high)) high = trace.high[row] as number;
  }
  return { low, high };
}
