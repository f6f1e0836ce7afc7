/** Rows of a stretch: `from` included, `to` not. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** An inclusive stretch of time, from one sample to another [ms since 1970-01-01 UTC]. */
export interface Stretch {
  readonly start: number;
  readonly end: number;
}

/**
 * First row whose time is `instant` or later; the number of rows when there is none.
 *
 * @param time rising instants [ms]
 * @param instant the instant looked for [ms]
 */
export function rowAt(time: Float64Array, instant: number): number {
  let low = 0;
  let high = time.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    if ((time[middle] as number) < instant) low = middle + 1;
    else high = middle;
  }
  return low;
}
