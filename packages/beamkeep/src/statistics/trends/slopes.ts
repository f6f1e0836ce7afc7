import { uniformInt } from 'pure-rand/distribution/uniformInt';
import { xoroshiro128plus } from 'pure-rand/generator/xoroshiro128plus';
import { orderStatistic } from '../orderStatistic.js';
import { inversions } from './inversions.js';

/*
 * The slopes between all pairs of points, looked up by rank without listing them.
 *
 * Turned by a slope s (r = y - s x), the points change their order: a pair slopes no more than s exactly where the right
 * point does not lie above the left one. So counting the slopes up to s is counting inversions, n log n. A few thousand
 * slopes drawn at random give a narrow bracket about the wanted rank; counting proves that it holds the rank; when few
 * enough slopes lie in it they are listed, again while merging, and the wanted one is picked.
 *
 * Source: the idea of Matousek, Information Processing Letters 39 (1991), and of Dillencourt, Mount and Netanyahu,
 * International Journal of Computational Geometry 2 (1992), from memory. The draw is seeded: the same every time.
 */

/** Points in order of x, those of equal x in order of y; without NaN. */
export interface Points {
  readonly x: Float64Array;
  readonly y: Float64Array;
}

/** A half-open range of slopes and how many lie below and up to its ends. */
interface Bracket {
  readonly low: number;
  readonly high: number;
  readonly below: number;
  readonly upTo: number;
}

/** Finds slopes by their rank, 0 for the least. */
export type SlopeAt = (rank: number) => number;

/** Number of pairs with different x. */
export function pairsOf({ x }: Points): number {
  let pairs = (x.length * (x.length - 1)) / 2;
  for (let from = 0; from < x.length; ) {
    let to = from + 1;
    while (to < x.length && x[to] === x[from]) to++;
    pairs -= ((to - from) * (to - from - 1)) / 2;
    from = to;
  }
  return pairs;
}

/** By listing every slope: best for up to a thousand points. */
export function listedSlopes(points: Points): SlopeAt {
  const { x, y } = points;
  const slopes = new Float64Array(pairsOf(points));
  let count = 0;
  for (let i = 0; i < x.length; i++) {
    for (let j = i + 1; j < x.length; j++) {
      const run = (x[j] as number) - (x[i] as number);
      if (run > 0) slopes[count++] = ((y[j] as number) - (y[i] as number)) / run;
    }
  }
  return (rank) => orderStatistic(slopes, rank);
}

const draws = 4000;
/** Draws that may be made for them; fewer slopes then make the bracket wider, not wrong. */
const mostTries = 1000 * draws;
const seed = 20270104;

/**
 * By narrowing a bracket about the wanted rank.
 *
 * @param mostListed slopes that may be listed at once
 */
export function narrowedSlopes(points: Points, mostListed = Math.max(300_000, 40 * points.x.length)): SlopeAt {
  const { x, y } = centred(points);
  const n = x.length;
  if (span(y) === 0) return () => 0;
  const pairs = pairsOf(points);
  const spare = new Float64Array(n);
  const turn = (slope: number) => y.map((value, i) => value - slope * (x[i] as number));
  const twins = twinsOf(points); // the same point twice: no slope, but always in the count
  const countUpTo = (slope: number) => inversions(turn(slope), spare, true) - twins;
  // slopes nearer than this are one: closer by, rounding could turn the order of neighbouring points
  const grain = (1e-14 * n * span(y)) / span(x);
  const generator = xoroshiro128plus(seed);

  /** Slopes of pairs drawn at random from those in the bracket, sorted. */
  function drawn({ low, high }: Bracket): Float64Array {
    const slopes = new Float64Array(draws);
    let count = 0;
    for (let tries = 0; count < draws && tries < mostTries; tries++) {
      const i = uniformInt(generator, 0, n - 1);
      const j = uniformInt(generator, 0, n - 1);
      const run = (x[j] as number) - (x[i] as number);
      if (run === 0) continue;
      const slope = ((y[j] as number) - (y[i] as number)) / run + 0; // plus 0: no minus 0
      if (slope > low && slope <= high) slopes[count++] = slope;
    }
    return slopes.subarray(0, count).sort();
  }

  return (rank) => {
    let bracket: Bracket = { low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY, below: 0, upTo: pairs };
    let stuck = false;
    while (bracket.upTo - bracket.below > mostListed) {
      const slopes = drawn(bracket);
      const last = slopes.length - 1;
      if (last < 0) return bracket.high; // what was counted here lies at the end of the bracket, but for rounding
      const share = (rank + 0.5 - bracket.below) / (bracket.upTo - bracket.below);
      const margin = 4 * Math.sqrt(slopes.length * share * (1 - share)) + 4;
      const guess = slopes[Math.floor(share * slopes.length)] as number;
      // where a few slopes are shared by many pairs, the bracket may not shrink: then about a single slope
      const least = stuck ? guess : (slopes[Math.max(0, Math.floor(share * last - margin))] as number);
      const greatest = stuck ? guess : (slopes[Math.min(last, Math.ceil(share * last + margin))] as number);
      const low = Math.max(least - grain, bracket.low);
      const high = Math.min(greatest + grain, bracket.high);
      const below = countUpTo(low);
      const upTo = countUpTo(high);
      if (rank >= below && rank < upTo && greatest - least <= 2 * grain) return guess;
      stuck = below <= bracket.below && upTo >= bracket.upTo;
      if (rank < below) bracket = { ...bracket, high: low, upTo: below };
      else if (rank >= upTo) bracket = { ...bracket, low: high, below: upTo };
      else bracket = { low, high, below, upTo };
    }
    const listed = slopesWithin({ x, y }, bracket, turn);
    return orderStatistic(listed, Math.min(Math.max(rank - bracket.below, 0), listed.length - 1));
  };
}

/** Every slope in the bracket, by merging the points in order of their height at its high end. */
function slopesWithin({ x, y }: Points, bracket: Bracket, turn: (slope: number) => Float64Array): Float64Array {
  const n = x.length;
  let order = Uint32Array.from({ length: n }, (_, i) => i);
  if (Number.isFinite(bracket.low)) {
    const atLow = turn(bracket.low);
    order.sort((i, j) => (atLow[i] as number) - (atLow[j] as number));
  }
  const atHigh = turn(bracket.high);
  const slopes = new Float64Array(bracket.upTo - bracket.below);
  let count = 0;
  let into = new Uint32Array(n);
  for (let width = 1; width < n; width *= 2) {
    for (let start = 0; start < n; start += 2 * width) {
      const middle = Math.min(start + width, n);
      const end = Math.min(start + 2 * width, n);
      let left = start;
      let right = middle;
      for (let place = start; place < end; place++) {
        const i = order[left] as number;
        const j = order[right] as number;
        if (right === end || (left < middle && (atHigh[i] as number) < (atHigh[j] as number))) {
          into[place] = i;
          left++;
          continue;
        }
        for (let k = left; k < middle; k++) {
          const other = order[k] as number;
          const run = (x[j] as number) - (x[other] as number);
          if (run > 0 && count < slopes.length) slopes[count++] = ((y[j] as number) - (y[other] as number)) / run;
        }
        into[place] = j;
        right++;
      }
    }
    [order, into] = [into, order];
  }
  return slopes.subarray(0, count);
}

/** The points about their middle, where turning them costs the fewest digits. */
function centred({ x, y }: Points): Points {
  const middle = ((x[0] as number) + (x[x.length - 1] as number)) / 2;
  const level = y[0] as number;
  return { x: x.map((value) => value - middle), y: y.map((value) => value - level) };
}

/** Greatest less least value. */
function span(values: Float64Array): number {
  let least = Number.POSITIVE_INFINITY;
  let greatest = Number.NEGATIVE_INFINITY;
  for (const value of values) {
    least = Math.min(least, value);
    greatest = Math.max(greatest, value);
  }
  return greatest - least;
}

/** Pairs of points that are one and the same. */
function twinsOf({ x, y }: Points): number {
  let twins = 0;
  for (let from = 0; from < x.length; ) {
    let to = from + 1;
    while (to < x.length && x[to] === x[from] && y[to] === y[from]) to++;
    twins += ((to - from) * (to - from - 1)) / 2;
    from = to;
  }
  return twins;
}
