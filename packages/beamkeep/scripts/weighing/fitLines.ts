import { type CauseWord, causeWords } from '../../src/diagnosis/index.js';
import { type Line, logOdds, probability } from '../../src/diagnosis/weighing/weighing.js';

/** One claim that was judged against the truth. */
export interface Example {
  readonly cause: CauseWord;
  /** The plain score, 0 to 1. */
  readonly score: number;
  readonly right: boolean;
  /** The claims of one cause on one beam share a weight of 1: a noisy beam with sixty claims counts as one. */
  readonly weight: number;
}

/** A fitted line and how many beams it rests on. */
export interface FittedLine extends Line {
  readonly beams: number;
}

/** Before any example: a score is taken as it stands. */
const identity: Line = { offset: 0, slope: 1 };
/** How far the line common to all causes may lie from that, and the line of a cause from the common one (spreads). */
const commonSpread: Line = { offset: 3, slope: 1 };
const ownSpread: Line = { offset: 1.5, slope: 0.5 };
/** A better score is always a little more likely. */
const leastSlope = 0.05;

/** Decimals of what is stored: coarse enough that machines agree. */
const stored = (value: number): number => Number(value.toFixed(3));

/**
 * Fits a line a cause. Each is drawn towards a line common to all causes, which matters where examples are few; that
 * one is drawn towards the identity.
 */
export function fitLines(examples: readonly Example[]): Record<CauseWord, FittedLine> {
  const common = mostLikely(
    examples.filter(({ cause }) => cause !== 'smoke-like'),
    identity,
    commonSpread,
  );
  const fitted = causeWords.map((cause) => {
    const own = examples.filter((example) => example.cause === cause);
    const { offset, slope } = mostLikely(own, common, ownSpread);
    const beams = Math.round(own.reduce((sum, { weight }) => sum + weight, 0));
    return [cause, { offset: stored(offset), slope: stored(slope), beams }] as const;
  });
  return Object.fromEntries(fitted) as Record<CauseWord, FittedLine>;
}

/** The most likely line, normal distributions about `middle` taken before: Newton's steps, no longer than 1. */
function mostLikely(examples: readonly Example[], middle: Line, spread: Line): Line {
  const stiffness = { offset: spread.offset ** -2, slope: spread.slope ** -2 };
  let { offset, slope } = middle;
  for (let step = 0; step < 100; step++) {
    let pullOffset = -stiffness.offset * (offset - middle.offset);
    let pullSlope = -stiffness.slope * (slope - middle.slope);
    let { offset: a, slope: c } = stiffness;
    let b = 0;
    for (const { score, right, weight } of examples) {
      const x = logOdds(score);
      const p = probability(offset + slope * x);
      pullOffset += weight * ((right ? 1 : 0) - p);
      pullSlope += weight * ((right ? 1 : 0) - p) * x;
      a += weight * p * (1 - p);
      b += weight * p * (1 - p) * x;
      c += weight * p * (1 - p) * x * x;
    }
    const determinant = a * c - b * b;
    const moveOffset = (c * pullOffset - b * pullSlope) / determinant;
    const moveSlope = (a * pullSlope - b * pullOffset) / determinant;
    const length = Math.hypot(moveOffset, moveSlope);
    const short = Math.min(1, 1 / length);
    offset += short * moveOffset;
    slope = Math.max(leastSlope, slope + short * moveSlope);
    if (length < 1e-9) break;
  }
  return { offset, slope };
}
