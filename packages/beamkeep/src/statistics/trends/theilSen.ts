import { UsageError } from '../../columns/index.js';
import { normalQuantile } from '../distributions/normal.js';
import { median } from '../median.js';
import { tiesOf } from './inversions.js';
import { listedSlopes, narrowedSlopes, type Points, pairsOf } from './slopes.js';

/** The line that half of all pairs of points rise more steeply than, and half less. */
export interface TheilSen {
  /** Median slope of all pairs [unit of y over unit of x]; NaN where no two x differ. */
  readonly slope: number;
  /** Median of y less slope times median of x [unit of y]. */
  readonly intercept: number;
  /** Limits of the slope at the confidence asked for. */
  readonly low: number;
  readonly high: number;
  /** Points that took part. */
  readonly n: number;
}

/** Points from which listing all slopes takes longer than narrowing. */
const fewPoints = 1000;

/**
 * Theil and Sen's robust line: up to 29 % of wild points do not bend it.
 *
 * @param x where, NaN where missing (the point is left out)
 * @param y what, NaN where missing
 * @param confidence of the limits, 0.95 when left out
 * @throws UsageError where x and y differ in length
 *
 * The limits take the points as independent: neighbours that resemble each other make them too narrow. The intercept
 * has a second custom, the median of y - slope x. Exact; time grows as n log n, so 100,000 points are no trouble.
 * Source: Sen, Journal of the American Statistical Association 63 (1968), eq. 2.6 for the limits, with ties.
 * @example theilSen([0, 1, 3, 4], [0, 1, 2, 4]).slope // 1
 */
export function theilSen(x: ArrayLike<number>, y: ArrayLike<number>, confidence = 0.95): TheilSen {
  if (x.length !== y.length) throw new UsageError(`theilSen: ${x.length} x and ${y.length} y must be as many`);
  const points = sortedPoints(x, y);
  const n = points.x.length;
  const pairs = pairsOf(points);
  const nothing = { slope: Number.NaN, intercept: Number.NaN, low: Number.NaN, high: Number.NaN, n };
  if (pairs === 0) return nothing;
  const slopeAt = n <= fewPoints ? listedSlopes(points) : narrowedSlopes(points);

  const upper = slopeAt(Math.floor(pairs / 2));
  const slope = pairs % 2 === 1 ? upper : (slopeAt(pairs / 2 - 1) + upper) / 2;
  const reach = -normalQuantile((1 - confidence) / 2) * Math.sqrt(concordanceVariance(points));
  const lowest = Math.max(nearestEven((pairs - reach) / 2) - 1, 0);
  const highest = Math.min(nearestEven((pairs + reach) / 2), pairs - 1);
  return {
    slope,
    intercept: median(points.y) - slope * median(points.x),
    low: slopeAt(lowest),
    high: slopeAt(highest),
    n,
  };
}

/** The points without missing values, in order of x, those of equal x in order of y. */
function sortedPoints(x: ArrayLike<number>, y: ArrayLike<number>): Points {
  const order: number[] = [];
  for (let i = 0; i < x.length; i++) {
    if (Number.isFinite(x[i]) && Number.isFinite(y[i])) order.push(i);
  }
  const at = (values: ArrayLike<number>, i: number) => values[i] as number;
  order.sort((i, j) => at(x, i) - at(x, j) || at(y, i) - at(y, j));
  return { x: Float64Array.from(order, (i) => at(x, i)), y: Float64Array.from(order, (i) => at(y, i)) };
}

/** Variance of the number of rising less falling pairs where y does not depend on x. */
function concordanceVariance({ x, y }: Points): number {
  const spread = (count: number) => (count * count - count) * (2 * count + 5);
  const tied = [...tiesOf(x), ...tiesOf(y.slice().sort())];
  return tied.reduce((sum, count) => sum - spread(count), spread(x.length)) / 18;
}

/** Nearest whole number, a half to the even side (the custom of numpy, whose limits these are). */
function nearestEven(value: number): number {
  const down = Math.floor(value);
  const share = value - down;
  return share > 0.5 || (share === 0.5 && down % 2 !== 0) ? down + 1 : down;
}
