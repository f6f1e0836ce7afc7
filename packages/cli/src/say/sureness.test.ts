import { describe, expect, it } from 'vitest';
import { sureness } from './sureness.js';

describe('sureness', () => {
  it.each([
    ['contamination', 0.97, 'almost certain (97 %)'],
    ['contamination', 0.8, 'very likely (80 %)'],
    ['contamination', 0.5, 'likely (50 %)'],
    ['contamination', 0.49, 'possible (49 %)'],
    ['smoke-like', 0.1, 'treat as fire (10 %)'],
  ] as const)('%s at %f: %s', (cause, confidence, told) => expect(sureness({ cause, confidence })).toBe(told));
});
