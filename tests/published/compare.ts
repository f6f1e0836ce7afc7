import { expect } from 'vitest';

/** Fails unless every number lies within the tolerance of the same shape, and everything else is equal. */
export function expectWithin(found: unknown, expected: unknown, tolerance: unknown, path = 'value'): void {
  if (typeof expected === 'number') {
    const off = Math.abs(Number(found) - expected);
    expect(off, `${path}: found ${found}, expected ${expected}`).toBeLessThanOrEqual(Number(tolerance));
  } else if (typeof expected === 'object' && expected !== null) {
    for (const [key, wanted] of Object.entries(expected)) {
      const inner = (whole: unknown) => (whole as Record<string, unknown>)[key];
      expectWithin(inner(found), wanted, inner(tolerance), `${path}.${key}`);
    }
  } else {
    expect(found, path).toBe(expected);
  }
}
