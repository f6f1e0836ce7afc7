import type { CauseWord } from '../finding.js';
import { type Beside, nobody } from './beside.js';
import weights from './weights.json' with { type: 'json' };

/*
 * From the score of a cause to a probability. A cause scores a stretch by physics alone: how clearly the signs of it are
 * there. How often such a score is right is another matter, and learned from simulated logs whose truth is known:
 *
 *     log-odds of being right
 *         = offset + slope · log-odds of the score + crowd · crowding + shared · s + alone · (1 - s)
 *
 * with five numbers a cause (weights.json). The slope is above 0, so of two stretches of one cause the one with the
 * better score is never the less likely. Offset 0, slope 1 and the others 0 leave a score as it is. Crowding is 0 up to six
 * stretches of the cause on the beam and grows with the logarithm of their number beyond, for many alike more often come
 * of one trouble that was not understood; it stops growing at 48, so that what really comes every day is still said. What
 * other beams show at the same times, s, is told in beside.ts.
 *
 * Source of the form: J. Platt, "Probabilistic outputs for support vector machines", 1999 (from memory), over the
 * log-odds of a score that is a probability already, so that the identity is among the maps.
 */

/** From the log-odds of a score to those of being right. What is left out is 0. */
export interface Line {
  readonly offset?: number;
  /** Above 0. */
  readonly slope: number;
  /** 0 or less. */
  readonly crowd?: number;
  /** What another beam that shows the same counts, 0 or more, and what counts where none does, 0 or less. */
  readonly shared?: number;
  readonly alone?: number;
}

/**
 * Probability that a stretch is rightly claimed.
 *
 * @param score of the cause, 0 to 1
 * @param alike how many stretches the cause claims on this beam, 1 or more
 * @param beside what the other beams tell of it
 */
export type Weighing = (cause: CauseWord, score: number, alike: number, beside?: Beside) => number;

/** Stretches of one cause on one beam from which they crowd, and beyond which more make no difference. */
const [crowdFrom, crowdTo] = [6, 48];

/** How much stretches of one cause crowd a beam: 0 where they are few. */
export const crowding = (alike: number): number => Math.log(Math.min(crowdTo, Math.max(crowdFrom, alike)) / crowdFrom);

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
  (cause, score, alike, beside = nobody) => {
    const { offset = 0, slope, crowd = 0, shared = 0, alone = 0 } = lines[cause];
    const odds =
      offset + slope * logOdds(score) + crowd * crowding(alike) + shared * beside.shared + alone * beside.alone;
    return Math.min(surest, Math.max(1 - surest, probability(odds)));
  };

/** Scores as they stand. */
export const plainScores: Weighing = (_, score) => score;

/** By the weights that the library carries. */
export const calibrated: Weighing = weighingBy(weights.causes);
