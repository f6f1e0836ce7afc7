import type { FindingJson } from 'beamkeep';

/**
 * A probability in words, with its number. Below a half it is a possibility only; what cannot be told from smoke is a
 * statement whatever the number.
 */
export function sureness({ cause, confidence }: Pick<FindingJson, 'cause' | 'confidence'>): string {
  const number = `${Math.round(confidence * 100)} %`;
  if (cause === 'smoke-like') return `treat as fire (${number})`;
  if (confidence >= 0.95) return `almost certain (${number})`;
  if (confidence >= 0.8) return `very likely (${number})`;
  if (confidence >= 0.5) return `likely (${number})`;
  return `possible (${number})`;
}
