/*
 * A function of the level, made of parabolas: the least cost of all that was read so far, if the level were now x.
 *
 *     cost                     Each piece is  curvature (x - centre)^2 + least  up to its right end. The first piece
 *      |    \   __   /         begins at minus infinity, the last ends at infinity, and neighbours meet without a step.
 *      |_____\_/  \_/___       A piece knows the row at which its last change lies.
 *      |   since 40  | since 0
 *      +------------------ x
 *
 * Always true: curvature is 0 or more, and where two pieces meet the slope can only fall (minima, and the bounded cost
 * of one reading, bend the function that way). `drifted` rests on the second.
 *
 * Parabolas are kept by their lowest point, not by coefficients: adding a reading is then a running mean, and a hundred
 * thousand readings cost no digits.
 */

/** A piecewise parabola in growing columns, `count` pieces from left to right. */
export interface Pieces {
  count: number;
  /** Right end of each piece; infinity for the last. */
  right: Float64Array;
  curvature: Float64Array;
  centre: Float64Array;
  least: Float64Array;
  /** Row at which the piece's last change lies; 0 for none. */
  since: Int32Array;
}

/** No piece yet. */
export const noPieces = (): Pieces => ({
  count: 0,
  right: new Float64Array(64),
  curvature: new Float64Array(64),
  centre: new Float64Array(64),
  least: new Float64Array(64),
  since: new Int32Array(64),
});

/** Makes room for so many pieces. */
function reserve(pieces: Pieces, count: number): void {
  const room = pieces.right.length;
  if (count <= room) return;
  const grown = <T extends Float64Array | Int32Array>(from: T, to: T): T => {
    to.set(from);
    return to;
  };
  const size = Math.max(count, 2 * room);
  pieces.right = grown(pieces.right, new Float64Array(size));
  pieces.curvature = grown(pieces.curvature, new Float64Array(size));
  pieces.centre = grown(pieces.centre, new Float64Array(size));
  pieces.least = grown(pieces.least, new Float64Array(size));
  pieces.since = grown(pieces.since, new Int32Array(size));
}

/** Adds a piece at the right; a flat one that carries on its flat neighbour only lengthens it. */
function append(pieces: Pieces, right: number, curvature: number, centre: number, least: number, since: number): void {
  const k = pieces.count;
  const last = k - 1;
  if (
    k > 0 &&
    curvature === 0 &&
    pieces.curvature[last] === 0 &&
    pieces.least[last] === least &&
    pieces.since[last] === since
  ) {
    pieces.right[last] = right;
    return;
  }
  pieces.right[k] = right;
  pieces.curvature[k] = curvature;
  pieces.centre[k] = centre;
  pieces.least[k] = least;
  pieces.since[k] = since;
  pieces.count = k + 1;
}

/** Starts afresh: a level of any height costs nothing. */
export function free(into: Pieces): void {
  into.count = 0;
  append(into, Number.POSITIVE_INFINITY, 0, 0, 0, 0);
}

/**
 * The function, or a change here where that is cheaper.
 *
 * @param cap cost of the best level so far and one more change
 * @param since the row at which the change would lie
 */
export function capped(from: Pieces, cap: number, since: number, into: Pieces): void {
  reserve(into, 3 * from.count + 1);
  into.count = 0;
  let left = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < from.count; k++) {
    const right = from.right[k] as number;
    const curvature = from.curvature[k] as number;
    const centre = from.centre[k] as number;
    const least = from.least[k] as number;
    if (least >= cap) {
      append(into, right, 0, 0, cap, since);
    } else if (curvature === 0) {
      append(into, right, 0, 0, least, from.since[k] as number);
    } else {
      const half = Math.sqrt((cap - least) / curvature);
      const down = centre - half;
      const up = centre + half;
      if (left < down) append(into, Math.min(down, right), 0, 0, cap, since);
      if (left < up && right > down) {
        append(into, Math.min(up, right), curvature, centre, least, from.since[k] as number);
      }
      if (right > up) append(into, right, 0, 0, cap, since);
    }
    left = right;
  }
}

/** Least cost of a function, and the row of the last change there. */
export interface Best {
  cost: number;
  since: number;
}

/**
 * The function and the cost of one reading: weight times the squared distance, at most weight times bound squared.
 *
 * @param best takes the least cost and its last change
 */
export function withReading(
  from: Pieces,
  value: number,
  weight: number,
  bound: number,
  into: Pieces,
  best: Best,
): void {
  reserve(into, 3 * from.count + 2);
  into.count = 0;
  best.cost = Number.POSITIVE_INFINITY;
  const ends = [value - bound, value + bound, Number.POSITIVE_INFINITY];
  let end = 0;
  let left = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < from.count; ) {
    const whole = from.right[k] as number;
    const kink = ends[end] as number;
    const right = Math.min(whole, kink);
    if (right > left) {
      let curvature = from.curvature[k] as number;
      let centre = from.centre[k] as number;
      let least = from.least[k] as number;
      if (end !== 1) {
        least += weight * bound * bound;
      } else if (curvature === 0) {
        curvature = weight;
        centre = value;
      } else {
        const off = value - centre;
        const sum = curvature + weight;
        least += (off * off * curvature * weight) / sum;
        centre += (off * weight) / sum;
        curvature = sum;
      }
      const since = from.since[k] as number;
      append(into, right, curvature, centre, least, since);
      const nearest = Math.min(Math.max(centre, left), right);
      const cost = curvature === 0 ? least : curvature * (nearest - centre) ** 2 + least;
      if (cost < best.cost) {
        best.cost = cost;
        best.since = since;
      }
      left = right;
    }
    if (kink <= whole) end++;
    if (whole <= kink) k++;
  }
}

/**
 * The function after the level was free to drift: for each level the cheapest way to come there.
 *
 * @param stiffness cost of a drift by 1, of which the square counts
 *
 * Each piece, stretched away from its centre, is a parabola again. Where slopes fall, stretched neighbours overlap; the
 * difference of a left and a right one only rises from left to right, so each pair parts at one place and a stack finds
 * the lower edge.
 * Source: the infimal convolution of Romano, Rigaill, Runge and Fearnhead, Journal of the American Statistical
 * Association 117 (2022), from memory; the stack is ours.
 */
export function drifted(from: Pieces, stiffness: number, into: Pieces): void {
  reserve(into, from.count);
  let top = -1;
  let left = Number.NEGATIVE_INFINITY;
  for (let k = 0; k < from.count; k++) {
    const right = from.right[k] as number;
    const stretch = (from.curvature[k] as number) / stiffness;
    const curvature = (from.curvature[k] as number) / (1 + stretch);
    const centre = from.centre[k] as number;
    const least = from.least[k] as number;
    const begins = stretched(left, stretch, centre);
    const ends = stretched(right, stretch, centre);
    while (top >= 0) {
      const start = top > 0 ? (into.right[top - 1] as number) : Number.NEGATIVE_INFINITY;
      if (start >= begins && heightAt(into, top, start) >= curvature * (start - centre) ** 2 + least) {
        top--; // the new piece is lower all along the one on top
      } else {
        const low = Math.max(start, begins);
        const parting = partingOf(into, top, curvature, centre, least, low, into.right[top] as number);
        into.right[top] = parting;
        break;
      }
    }
    top++;
    into.right[top] = ends;
    into.curvature[top] = curvature;
    into.centre[top] = centre;
    into.least[top] = least;
    into.since[top] = from.since[k] as number;
    left = right;
  }
  into.count = top + 1;
}

/** An end of a piece moved away from the centre; an infinite end stays. */
const stretched = (end: number, stretch: number, centre: number) =>
  stretch === 0 || !Number.isFinite(end) ? end : end + stretch * (end - centre);

/** Height of a piece at a level. */
const heightAt = (pieces: Pieces, k: number, x: number) =>
  (pieces.curvature[k] as number) * (x - (pieces.centre[k] as number)) ** 2 + (pieces.least[k] as number);

/** Where the parabola on top and the one to its right part, between two ends. */
function partingOf(
  pieces: Pieces,
  k: number,
  curvature: number,
  centre: number,
  least: number,
  low: number,
  high: number,
): number {
  // in d = x - centre:  (a1 - a2) d^2 + 2 a1 s d + a1 s^2 + v1 - v2 = 0, with s = centre - centre of the left one
  const a1 = pieces.curvature[k] as number;
  const shift = centre - (pieces.centre[k] as number);
  const square = a1 - curvature;
  const half = a1 * shift;
  const constant = a1 * shift * shift + (pieces.least[k] as number) - least;
  const root = Math.sqrt(Math.max(half * half - square * constant, 0));
  // the difference rises where the two part: its derivative there, square d + half, is plus the root
  const d = half > 0 ? -constant / (half + root) : square === 0 ? -constant / (2 * half) : (root - half) / square;
  const x = centre + d;
  return x > low ? Math.max(low, Math.min(x, high)) : low; // two flat pieces: not a number, so at the left end
}
