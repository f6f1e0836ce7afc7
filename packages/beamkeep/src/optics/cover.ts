import { UsageError } from '../columns/index.js';
import { gaussianHalfWidth } from '../numbers/index.js';
import { normalProbability } from '../statistics/index.js';

/*
 * What a cover on the reflector, or a filter before the head, takes of the light.
 *
 *      ____________        A cover on the reflector is met once: it hides the share of the light that falls on what it
 *     |####|       |       covers. Evenly lit that is its share of the area; under a lobe the middle counts for more.
 *     |####|       |
 *     |####|_______|       A filter before a reflective head is crossed on the way out and on the way back.
 *     from  to             Places are measured from the middle of the reflector, across the cover's straight edge.
 */

/** A prism-array reflector facing the head. */
export type Reflector =
  | { readonly shape: 'rectangle' /** Across the cover's edge [mm]. */; readonly width: number }
  | { readonly shape: 'round' /** [mm] */; readonly diameter: number };

/** How a lobe lights the reflector; left out, it is lit evenly. */
export interface Lighting {
  /** Distance from the middle of the spot at which what comes back halves [mm]: separation times tan(half-angle). */
  readonly halfPowerRadius: number;
  /** Middle of the spot, from the middle of the reflector, across the cover's edge [mm]; 0 when left out. */
  readonly offset?: number;
}

/** A cover from one place to another, full height. */
export interface Strip {
  /** [mm] from the middle of the reflector; minus infinity for all from the edge on. */
  readonly from: number;
  /** [mm] */
  readonly to: number;
}

/** Half of the size across the cover's edge [mm]. */
const halfOf = (reflector: Reflector) => (reflector.shape === 'rectangle' ? reflector.width : reflector.diameter) / 2;

/**
 * Obscuration by a strip that covers part of a reflector.
 *
 * @param reflector shape and size
 * @param strip what is covered; what lies beyond the reflector counts for nothing
 * @param lighting lobe on the reflector; evenly lit when left out
 * @returns obscuration [%], 0 to 100
 * @throws UsageError for a size that is none
 *
 * Source: derived; the light meets the cover once, so the share counts once.
 * @example coverObscuration({ shape: 'rectangle', width: 100 }, { from: -50, to: -15 }) // 35
 */
export function coverObscuration(reflector: Reflector, strip: Strip, lighting?: Lighting): number {
  const half = halfOf(reflector);
  if (!(half > 0)) throw new UsageError(`cover: the size of the reflector, ${2 * half} mm, must be above 0`);
  if (lighting && !(lighting.halfPowerRadius > 0)) {
    throw new UsageError(`cover: half-power radius ${lighting.halfPowerRadius} mm must be above 0`);
  }
  const from = Math.min(Math.max(strip.from, -half), half);
  const to = Math.min(Math.max(strip.to, from), half);
  const light = lightBetween(reflector, half, lighting);
  return (100 * light(from, to)) / light(-half, half);
}

/**
 * Width of a strip that covers from one edge of the reflector on and hides so much: the inverse of `coverObscuration`.
 *
 * @param obscuration [%], 0 to 100
 * @param reflector shape and size
 * @param lighting lobe on the reflector; evenly lit when left out. A spot off the middle makes the two edges differ:
 *   the strip grows from the side of negative places
 * @returns [mm]
 * @throws UsageError for an obscuration that no cover makes
 * @example coverFromEdge(35, { shape: 'rectangle', width: 100 }) // 35
 */
export function coverFromEdge(obscuration: number, reflector: Reflector, lighting?: Lighting): number {
  const half = halfOf(reflector);
  return widthThatHides(obscuration, 2 * half, (width) =>
    coverObscuration(reflector, { from: -half, to: width - half }, lighting),
  );
}

/**
 * Width of a strip across the middle of the reflector that hides so much.
 *
 * @param obscuration [%], 0 to 100
 * @param reflector shape and size
 * @param lighting lobe on the reflector; evenly lit when left out
 * @returns [mm]
 * @throws UsageError for an obscuration that no cover makes
 * @example coverFromMiddle(35, { shape: 'rectangle', width: 100 }) // 35
 */
export function coverFromMiddle(obscuration: number, reflector: Reflector, lighting?: Lighting): number {
  return widthThatHides(obscuration, 2 * halfOf(reflector), (width) =>
    coverObscuration(reflector, { from: -width / 2, to: width / 2 }, lighting),
  );
}

/** Width at which a rising obscuration passes the one asked for, by halving. */
function widthThatHides(obscuration: number, most: number, hidden: (width: number) => number): number {
  if (!(obscuration >= 0 && obscuration <= 100)) {
    throw new UsageError(`cover: obscuration ${obscuration} % must lie from 0 to 100`);
  }
  let low = 0;
  let high = most;
  for (let round = 0; round < 60; round++) {
    const width = (low + high) / 2;
    if (hidden(width) < obscuration) low = width;
    else high = width;
  }
  return (low + high) / 2;
}

/** Light on the reflector between two places, in units of its own. */
function lightBetween(reflector: Reflector, half: number, lighting?: Lighting): (from: number, to: number) => number {
  if (reflector.shape === 'rectangle') {
    if (lighting === undefined) return (from, to) => to - from;
    return (from, to) => spotUpTo(to, lighting) - spotUpTo(from, lighting);
  }
  if (lighting === undefined) return (from, to) => discUpTo(to / half) - discUpTo(from / half);
  return (from, to) => litDiscBetween(from / half, to / half, half, lighting);
}

/** Share of a Gaussian spot up to a straight edge. */
function spotUpTo(place: number, { halfPowerRadius, offset = 0 }: Lighting): number {
  const radius = halfPowerRadius / gaussianHalfWidth.value;
  return normalProbability((2 * (place - offset)) / radius);
}

/** Share of a disc up to a straight edge, q radii from its middle. */
const discUpTo = (q: number) => 1 - (Math.acos(q) - q * Math.sqrt(1 - q * q)) / Math.PI;

/** Light on a round reflector between two straight edges, in radii from its middle: Simpson's rule over the angle. */
function litDiscBetween(from: number, to: number, radius: number, lighting: Lighting): number {
  const { halfPowerRadius, offset = 0 } = lighting;
  const across = (place: number) => 2 ** -(((place - offset) / halfPowerRadius) ** 2);
  const along = (chord: number) => 1 - 2 * spotUpTo(-chord, { halfPowerRadius });
  const [start, end] = [Math.asin(from), Math.asin(to)];
  const steps = 2 * Math.ceil(100 + Math.min(40 * (radius / halfPowerRadius), 2000));
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const angle = start + ((end - start) * i) / steps;
    const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * across(radius * Math.sin(angle)) * along(radius * Math.cos(angle)) * Math.cos(angle);
  }
  return (sum * (end - start)) / (3 * steps);
}

/**
 * Obscuration of an evenly lit disc by a straight edge.
 *
 * @param edge distance of the edge from the middle, over the radius: 1 just touches, 0 halves, -1 covers all
 * @returns obscuration [%]
 *
 * Source: derived; (acos q - q sqrt(1 - q^2)) / pi.
 * @example edgeOnDisc(0.5) // 19.55
 */
export const edgeOnDisc = (edge: number): number => 100 * (1 - discUpTo(Math.min(Math.max(edge, -1), 1)));

/**
 * Obscuration of a Gaussian spot on a reflector larger than it, by a straight edge.
 *
 * @param edge distance of the edge from the middle of the spot, over the spot's radius at 1/e^2
 * @returns obscuration [%]: 50 with the edge on the middle
 *
 * Source: derived; the knife-edge law 0.5 (1 - erf(sqrt 2 x / w)).
 * @example edgeInSpot(0.25) // 30.85
 */
export const edgeInSpot = (edge: number): number => 100 * normalProbability(-2 * edge);
