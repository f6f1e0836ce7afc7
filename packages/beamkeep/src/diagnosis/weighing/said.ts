import type { Claim } from '../cause.js';
import type { CauseWord } from '../finding.js';
import type { Beside } from './beside.js';
import type { Weighing } from './weighing.js';

/** Least confidence at which a possibility is still said. */
const leastConfidence = 0.1;
/** Most confidence that is said of what is not smoke: nothing read off a level is certain. Own choice. */
const mostConfidence = 0.99;
/** Confidence from which a finding is a statement. */
const statement = 0.5;

/**
 * What is said of a claim once it is weighed: its confidence and the reader's duty. A possibility is no more than a
 * note. What cannot be told from smoke is a statement at any confidence, so no weighing drops it or makes less of it.
 *
 * @param alike how many stretches the cause claims on this beam
 * @param beside what the other beams tell of it
 * @returns undefined where the claim is too unlikely to be said
 */
export function said(
  cause: CauseWord,
  { confidence: score, severity }: Pick<Claim, 'confidence' | 'severity'>,
  alike: number,
  weighing: Weighing,
  beside?: Beside,
): Pick<Claim, 'confidence' | 'severity'> | undefined {
  const confidence = Math.round(weighing(cause, score, alike, beside) * 1000) / 1000;
  if (cause === 'smoke-like') return { confidence, severity };
  if (confidence < leastConfidence) return undefined;
  return { confidence: Math.min(mostConfidence, confidence), severity: confidence >= statement ? severity : 'note' };
}
