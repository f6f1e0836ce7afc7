import type { CauseWord } from '../finding.js';
import weights from './weights.json' with { type: 'json' };

/*
 * From the score of a cause to a probability. A cause scores a stretch by physics alone: how clearly the signs of it are
 * there. How often such a score is right is another matter, and learned from simulated logs whose truth is known:
 *
 *     log-odds of being right = offset + slope · log-odds of the score
 *
 * with two numbers a cause (weights.json). The slope is never negative, so of two stretches of one cause the one with
 * the better score is never the less likely. Offset 0 and slope 1 leave a score as it is.
 *
 * Source of the form: J. Platt, "Probabilistic outputs for support vector machines", 1999 (from memory), over the
 * log-odds of a score that is a probability already, so that the identity is among the maps.
 */

/** The straight line from the log-odds of a score to those of being right. */
export interface Line {
  readonly offset: number;
  /** 0 or more. */
  readonly slope: number;
}

/** Probability that a stretch is rightly claimed, from the cause and its score (0 to 1). */
export type Weighing = (cause: CauseWord, score: number) => number;

/** Nothing is surer than this, nor than its counterpart less sure. */
const surest = 0.995;

/** Log-odds of a probability, its ends pulled in. */
export const logOdds = (probability: number): number => {
  const p = Math.min(surest, Math.max(1 - surest, probability));
  return Math.log(p / (1 - p));
};

/** Probability of log-odds. */
export const probability = (odds: number): number => 1 / (1 + Math.exp(-odds));

/** Weighs by a line a cause. */
export const weighingBy =
  (lines: Readonly<Record<CauseWord, Line>>): Weighing =>
  (cause, score) => {
    const { offset, slope } = lines[cause];
    return Math.min(surest, Math.max(1 - surest, probability(offset + slope * logOdds(score))));
  };

/** Scores as they stand. */
export const plainScores: Weighing = (_, score) => score;

/** By the weights that the library carries. */
export const calibrated: Weighing = weighingBy(weights.causes);
