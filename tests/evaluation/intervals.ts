/*
 * Stretches of time as half-open intervals [from, to), in ms. A stretch of samples, first to last, becomes one by adding
 * the interval between samples to its end: a single sample then has a length.
 */

/** Half-open: `from` included, `to` not [ms]. */
export interface Interval {
  readonly from: number;
  readonly to: number;
}

/** Whether two intervals share any time. */
export const overlap = (a: Interval, b: Interval): boolean => a.from < b.to && b.from < a.to;

/** The same time covered by rising intervals that do not touch. */
export function union(intervals: readonly Interval[]): Interval[] {
  const joined: Interval[] = [];
  for (const { from, to } of [...intervals].sort((a, b) => a.from - b.from)) {
    const last = joined.at(-1);
    if (last && from <= last.to) joined[joined.length - 1] = { from: last.from, to: Math.max(last.to, to) };
    else joined.push({ from, to });
  }
  return joined;
}

const length = (intervals: readonly Interval[]): number => intervals.reduce((sum, { from, to }) => sum + to - from, 0);

/** Time in both unions as a share of the time in either: 1 the same, 0 apart; NaN when both are empty. */
export function intersectionOverUnion(a: readonly Interval[], b: readonly Interval[]): number {
  const either = length(union([...a, ...b]));
  return (length(union(a)) + length(union(b)) - either) / either;
}

/**
 * Pairs each of `wanted` with at most one of `offered` and the other way round, as many pairs as can be (augmenting
 * paths).
 *
 * @returns for each of `wanted` the row of its partner in `offered`, or undefined
 */
export function pairs<A, B>(
  wanted: readonly A[],
  offered: readonly B[],
  fits: (a: A, b: B) => boolean,
): (number | undefined)[] {
  const taken = new Map<number, number>();
  const find = (row: number, seen: Set<number>): boolean => {
    for (const [column, candidate] of offered.entries()) {
      if (seen.has(column) || !fits(wanted[row] as A, candidate)) continue;
      seen.add(column);
      const holder = taken.get(column);
      if (holder === undefined || find(holder, seen)) {
        taken.set(column, row);
        return true;
      }
    }
    return false;
  };
  for (const row of wanted.keys()) find(row, new Set());
  const partner: (number | undefined)[] = wanted.map(() => undefined);
  for (const [column, row] of taken) partner[row] = column;
  return partner;
}
