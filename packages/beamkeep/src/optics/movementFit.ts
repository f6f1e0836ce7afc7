import { UsageError } from '../columns/index.js';
import { halfPowerLoss } from '../numbers/index.js';
import {
  blockCovariance,
  mean,
  quantile,
  type RobustFit,
  robustLeastSquares,
  studentQuantile,
} from '../statistics/index.js';
import type { Estimate } from './estimate.js';

/*
 * A building that moves tells where the aim stands. With a proxy u of the movement (the structure's temperature some
 * hours ago), a head that stands o half-angles off its peak when u is at its reference, and moves g half-angles for a
 * unit of u, loses
 *
 *     L (o + g v)^2 + rest  =  (L o^2 + rest) + 2 L o g v + L g^2 v^2,      v = u - reference, L = 3.01 dB
 *                                     a            b          c
 *
 * so g = sqrt(c / L) and o = b / (2 sqrt(L c)): curvature measures the movement, slope over curvature the offset. What
 * does not depend on u (dirt, an offset square to the movement) only lifts a, and stays unseen: the offset is that along
 * the movement, and what re-aiming would win is at least what is told here.
 *
 * Where the curvature cannot be told from none there is no offset, only bounds: b = 2 L o g is known, and a g no
 * greater than c allows leaves an o no smaller than b / (2 L g).
 */

/** What the quadratic of loss on movement says about the aim. */
export interface MovementFit {
  /** Whether the curvature stands clear of none; if not, values are NaN and limits are bounds. */
  readonly determined: boolean;
  /** Proxy at which the offset is told: the middle of its range [unit of the proxy]. */
  readonly reference: number;
  /** Half the proxy's usual range, from its 2nd to its 98th percentile [unit of the proxy]. */
  readonly halfRange: number;
  /** Turn away from the peak at the reference, positive towards rising proxy [half-angles]. */
  readonly offset: Estimate;
  /** Turn for a unit of the proxy [half-angles]. */
  readonly movementPerUnit: Estimate;
  /** Turn over half the proxy's usual range [half-angles]: the movement is plus and minus this. */
  readonly movement: Estimate;
  /** Proxy at which the beam would stand on its peak [unit of the proxy]. */
  readonly peak: number;
  /** Loss by the offset at the reference [dB]. */
  readonly lossAtRest: Estimate;
  /** What re-aiming to the middle of the movement would win on average [dB]. */
  readonly winOnAverage: Estimate;
  /** What it would win at the worst end of the movement, the daily low [dB]. */
  readonly winAtLow: Estimate;
  /** The fit of loss on 1, v and v squared, v counted in half ranges of the proxy. */
  readonly fit: RobustFit;
}

/** How a movement is fitted. */
export interface MovementOptions {
  /** One a row, proportional to 1 / variance; 0 leaves a row out; all 1 when left out. */
  readonly weights?: Float64Array;
  /** Rows over which what is left resembles itself, such as a day; 1 (unrelated rows) when left out. */
  readonly block?: number;
  /** Of all limits, 0 to 1; 0.9 when left out. */
  readonly confidence?: number;
  /** Least spread of the residuals to believe in [dB]. */
  readonly leastSpread?: number;
}

const unknown: Estimate = { value: Number.NaN, low: Number.NaN, high: Number.NaN };

/**
 * Offset of the aim and movement of the structure, from a beam's loss against a proxy of the movement.
 *
 * @param loss one a row [dB], events and slow loss taken off; NaN where missing
 * @param proxy of the movement, such as the structure's temperature some hours before [any unit]; NaN where missing
 * @returns offset and movement in half-angles, with limits; everything NaN where the proxy does not vary
 * @throws UsageError where the columns differ in length
 *
 * Exact for a Gaussian lobe and a movement in proportion to the proxy. Robust: events in up to a third of the rows do
 * not bend it. Noise in the proxy flattens the curvature.
 * Source: derived; limits of the quotient by Fieller, Journal of the Royal Statistical Society B 16 (1954), from memory.
 * @example movementFit(loss, roofTemperature, { block: 24 }).offset // { value: 0.6, low: 0.5, high: 0.7 }
 */
export function movementFit(loss: Float64Array, proxy: Float64Array, options: MovementOptions = {}): MovementFit {
  const { weights, block = 1, confidence = 0.9, leastSpread = 0 } = options;
  if (loss.length !== proxy.length) {
    throw new UsageError(`movementFit: ${loss.length} losses and ${proxy.length} proxies must be as many`);
  }
  const seen = proxy.map((u, i) => (Number.isNaN(loss[i]) || weights?.[i] === 0 ? Number.NaN : u));
  const low = quantile(seen, 0.02);
  const high = quantile(seen, 0.98);
  const reference = (low + high) / 2;
  const halfRange = (high - low) / 2;
  const v = seen.map((u) => (u - reference) / halfRange);
  const columns = [new Float64Array(v.length).fill(1), v, v.map((x) => x * x)];
  const fit = robustLeastSquares(columns, loss, { leastSpread, ...(weights ? { weights } : {}) });
  const { covariance, degreesOfFreedom } =
    block > 1 ? blockCovariance(columns, fit, block, weights) : { ...fit, degreesOfFreedom: fit.n - fit.rank };
  if (fit.rank < 3 || !(degreesOfFreedom > 0)) {
    const [offset, movementPerUnit, movement] = [unknown, unknown, unknown];
    const [lossAtRest, winOnAverage, winAtLow] = [unknown, unknown, unknown];
    const nothing = { offset, movementPerUnit, movement, lossAtRest, winOnAverage, winAtLow };
    return { determined: false, reference, halfRange, ...nothing, peak: Number.NaN, fit };
  }
  const reach = studentQuantile((1 + confidence) / 2, degreesOfFreedom);
  const strict = studentQuantile((3 + confidence) / 4, degreesOfFreedom); // a bound on two numbers shares its risk
  const slope = fit.coefficients[1] as number;
  const curvature = fit.coefficients[2] as number;
  const entry = (i: number, j: number) => covariance[i]?.[j] as number;
  const movement = movementOf(curvature, reach * Math.sqrt(entry(2, 2)));
  const margin = reach * Math.sqrt(entry(1, 1));
  const determined = movement.low > 0;
  const offset = determined
    ? offsetOf(slope, curvature, entry(1, 1), entry(1, 2), entry(2, 2), reach)
    : offsetBounds(slope, strict * Math.sqrt(entry(1, 1)), movementOf(curvature, strict * Math.sqrt(entry(2, 2))).high);
  const square = squareOf(offset);
  const middle = mean(v);
  const over = (value: number) => value / halfRange;
  return {
    determined,
    reference,
    halfRange,
    offset,
    movementPerUnit: { value: over(movement.value), low: over(movement.low), high: over(movement.high) },
    movement,
    peak: reference - (offset.value / movement.value) * halfRange,
    lossAtRest: square,
    winOnAverage: lifted(square, slope * middle, margin * Math.abs(middle)),
    winAtLow: lifted(square, Math.abs(slope), margin),
    fit,
  };
}

const perSquare = halfPowerLoss.value;

/** Movement over half the range from the curvature and how far that may be off. */
function movementOf(curvature: number, margin: number): Estimate {
  const root = (c: number) => Math.sqrt(Math.max(c, 0) / perSquare);
  const low = root(curvature - margin);
  return { value: low > 0 ? root(curvature) : Number.NaN, low, high: root(curvature + margin) };
}

/** Offset b / (2 sqrt(L c)) with Fieller's limits for the quotient of slope and root of curvature. */
function offsetOf(b: number, c: number, varianceB: number, covariance: number, varianceC: number, reach: number) {
  const s = Math.sqrt(c);
  const varianceS = varianceC / (4 * c);
  const covarianceS = covariance / (2 * s);
  const t = reach ** 2;
  // (b - q s)^2 <= t (varianceB - 2 q covarianceS + q^2 varianceS), a quadratic in q
  const square = s * s - t * varianceS;
  const half = b * s - t * covarianceS;
  const constant = b * b - t * varianceB;
  const root = Math.sqrt(Math.max(half * half - square * constant, 0));
  const scale = 2 * Math.sqrt(perSquare);
  const open = square <= 0;
  return {
    value: b / s / scale,
    low: open ? Number.NEGATIVE_INFINITY : (half - root) / square / scale,
    high: open ? Number.POSITIVE_INFINITY : (half + root) / square / scale,
  };
}

/** Bounds of the offset where only slope and greatest movement are known. */
function offsetBounds(slope: number, margin: number, movement: number): Estimate {
  const least = (b: number) => b / (2 * perSquare * movement);
  if (slope - margin > 0) return { value: Number.NaN, low: least(slope - margin), high: Number.POSITIVE_INFINITY };
  if (slope + margin < 0) return { value: Number.NaN, low: Number.NEGATIVE_INFINITY, high: least(slope + margin) };
  return { value: Number.NaN, low: Number.NEGATIVE_INFINITY, high: Number.POSITIVE_INFINITY };
}

/** Loss of an offset [dB]. */
function squareOf({ value, low, high }: Estimate): Estimate {
  const at = (offset: number) => perSquare * offset ** 2;
  const across = low <= 0 && high >= 0;
  return { value: at(value), low: across ? 0 : Math.min(at(low), at(high)), high: Math.max(at(low), at(high)) };
}

/** An estimate and a share on top that may be off by a margin. */
const lifted = ({ value, low, high }: Estimate, share: number, margin: number): Estimate => ({
  value: value + share,
  low: Math.max(low + share - margin, 0),
  high: high + share + margin,
});
