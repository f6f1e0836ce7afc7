/** A stretch of a record, thin enough to be drawn and kept: offsets from its start [s] and values. */
export interface ThinTrace {
  /** First sample, ISO 8601 in UTC. */
  readonly start: string;
  /** [s] from the first sample */
  readonly seconds: readonly number[];
  readonly values: readonly number[];
}

/** Most points that a drawing shows. */
const mostPoints = 600;

/**
 * A record of a few hundred points: of each piece its first, least, greatest and last sample, so that no dip and no
 * edge is lost.
 *
 * @param time [ms], rising
 * @param values one a sample
 * @param digits digits after the point that are kept
 * @param unit what the values are counted in: the level of clean air makes shares of readings
 */
export function thinned(time: Float64Array, values: ArrayLike<number>, digits = 3, unit = 1): ThinTrace {
  const start = time[0] ?? 0;
  const pieces = Math.min(Math.ceil(time.length / 4), mostPoints / 4);
  const rows = new Set<number>();
  for (let piece = 0; piece < pieces; piece++) {
    const from = Math.floor((piece * time.length) / pieces);
    const to = Math.floor(((piece + 1) * time.length) / pieces);
    let [low, high] = [from, from];
    for (let row = from; row < to; row++) {
      if ((values[row] as number) < (values[low] as number)) low = row;
      if ((values[row] as number) > (values[high] as number)) high = row;
    }
    for (const row of [from, low, high, to - 1]) rows.add(row);
  }
  const kept = [...rows].sort((a, b) => a - b);
  const rounded = (value: number) => Number(value.toFixed(digits));
  return {
    start: new Date(start).toISOString(),
    seconds: kept.map((row) => rounded(((time[row] as number) - start) / 1000)),
    values: kept.map((row) => rounded((values[row] as number) / unit)),
  };
}
