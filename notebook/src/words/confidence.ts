import type { Finding } from 'beamkeep/diagnosis';

/**
 * A probability in words. From one half it is a statement, below a possibility; what looks like smoke is a statement
 * at any confidence.
 */
export function confidenceInWords({ cause, confidence }: Pick<Finding, 'cause' | 'confidence'>): string {
  if (cause === 'smoke-like' && confidence < 0.5) return 'to be treated as smoke all the same';
  if (confidence >= 0.95) return 'almost certain';
  if (confidence >= 0.8) return 'very likely';
  if (confidence >= 0.65) return 'likely';
  if (confidence >= 0.5) return 'more likely than not';
  return confidence >= 0.25 ? 'a possibility' : 'a faint possibility';
}
