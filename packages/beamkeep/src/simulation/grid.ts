/** A quantity known at even steps of time. */
export interface Grid {
  /** Instant of the first value [ms]. */
  readonly start: number;
  /** Distance between values [ms]. */
  readonly step: number;
  readonly values: Float64Array;
}

/** The value at an instant, on the straight line between neighbours; the nearest beyond the ends. */
export function at({ start, step, values }: Grid, instant: number): number {
  const place = (instant - start) / step;
  const low = Math.min(Math.max(Math.floor(place), 0), values.length - 1);
  const high = Math.min(low + 1, values.length - 1);
  const share = Math.min(Math.max(place - low, 0), 1);
  return (values[low] as number) * (1 - share) + (values[high] as number) * share;
}

/** A first-order lag of a grid: what a heavy body makes of the temperature about it. */
export function lagged(grid: Grid, lagMilliseconds: number): Grid {
  const { values, step } = grid;
  const keep = Math.exp(-step / Math.max(lagMilliseconds, step / 20));
  const out = new Float64Array(values.length);
  let state = values[0] ?? 0;
  for (let i = 0; i < values.length; i++) {
    state = keep * state + (1 - keep) * (values[i] as number);
    out[i] = state;
  }
  return { ...grid, values: out };
}

/** Quantile of some values, by the nearest rank; NaN of none. */
export function rank(values: ArrayLike<number>, share: number): number {
  const sorted = Float64Array.from(values).sort();
  return sorted[Math.min(sorted.length - 1, Math.max(0, Math.round(share * (sorted.length - 1))))] ?? Number.NaN;
}
