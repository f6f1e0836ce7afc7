import { describe, expect, it } from 'vitest';
import { instantOut, numberIn, numberOut } from './numbersOut.js';

describe('numberOut', () => {
  it.each([0, -2.5, Number.NaN, Number.POSITIVE_INFINITY])('%f comes back through JSON', (value) =>
    expect(numberIn(JSON.parse(JSON.stringify(numberOut(value))))).toBe(value),
  );
});

describe('instantOut', () => {
  it('is ISO 8601, and null where nothing is known', () => {
    expect(instantOut(0)).toBe('1970-01-01T00:00:00.000Z');
    expect(instantOut(Number.NaN)).toBeNull();
  });
});
