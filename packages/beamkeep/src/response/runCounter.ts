/*
 * Counts, for many thresholds and delays at once, the signals that a condition would have given.
 *
 * A run is the time for which the condition of one threshold holds. It gives one signal for every delay that it
 * outlasts, provided that this pair of threshold and delay is armed. A signal disarms its pair; ten minutes below the
 * threshold arm all pairs of that threshold again, so that a loss that dithers about a threshold counts once.
 *
 * Thresholds rise, so those that a sample has come to are the first few. Only they are looked at, and in a run only the
 * next delay that is not yet outlasted: a clear beam costs nothing.
 */

/** Time below a threshold that arms it again [ms]. */
export const rearm = 600_000;

/** Counts of one condition over thresholds and delays. */
export interface RunCounter {
  /** A threshold was crossed upwards: its pairs are armed where it lay below for long enough. */
  rise(row: number, time: number): void;
  /** A threshold was crossed downwards. */
  fall(row: number, time: number): void;
  /** The condition of a threshold holds at a sample. */
  hold(row: number, time: number): void;
  /** The condition of a threshold held until just before an instant. */
  holdBefore(row: number, time: number): void;
  /** The condition of a threshold does not hold, or is not shown to. */
  stop(row: number): void;
  /** Signals, a row a threshold and a column a delay. */
  readonly counts: readonly Uint32Array[];
}

/**
 * A counter of runs.
 *
 * @param thresholds how many thresholds
 * @param delays rising delays [ms]
 */
export function runCounter(thresholds: number, delays: readonly number[]): RunCounter {
  const since = new Float64Array(thresholds).fill(Number.NaN);
  const below = new Float64Array(thresholds).fill(Number.NEGATIVE_INFINITY);
  const outlasted = new Int32Array(thresholds);
  const armed = Array.from({ length: thresholds }, () => new Uint8Array(delays.length).fill(1));
  const counts = Array.from({ length: thresholds }, () => new Uint32Array(delays.length));

  /** Gives the signals of the delays that a run has outlasted at an instant, or, if `open`, before it. */
  function grow(row: number, time: number, open: boolean): void {
    const start = since[row] as number;
    const arms = armed[row] as Uint8Array;
    const tally = counts[row] as Uint32Array;
    let next = outlasted[row] as number;
    for (; next < delays.length; next++) {
      const left = time - start - (delays[next] as number);
      if (open ? !(left > 0) : !(left >= 0)) break;
      if (arms[next] === 0) continue;
      arms[next] = 0;
      tally[next] = (tally[next] as number) + 1;
    }
    outlasted[row] = next;
  }

  return {
    rise(row, time) {
      if (time - (below[row] as number) >= rearm) armed[row]?.fill(1);
    },
    fall(row, time) {
      below[row] = time;
    },
    hold(row, time) {
      if (Number.isNaN(since[row])) {
        since[row] = time;
        outlasted[row] = 0;
      }
      grow(row, time, false);
    },
    holdBefore(row, time) {
      grow(row, time, true);
    },
    stop(row) {
      since[row] = Number.NaN;
    },
    counts,
  };
}
