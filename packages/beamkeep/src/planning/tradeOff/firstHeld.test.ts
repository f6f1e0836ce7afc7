import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { firstHeld } from './firstHeld.js';

const of = (...values: number[]) => Float64Array.from(values);

describe('firstHeld', () => {
  it('waits for the whole delay without a break', () => {
    expect(firstHeld(of(0, 5, 5, 0, 5, 5, 5), 5, 2)).toBe(6);
    expect(firstHeld(of(0, 5, 5), 5, 0)).toBe(1);
    expect(firstHeld(of(0, 5, Number.NaN, 5, 5), 5, 1)).toBe(4);
    expect(firstHeld(of(0, 1, 2), 5, 0)).toBe(Number.POSITIVE_INFINITY);
  });
  it('law: a higher threshold or a longer delay is never earlier', () => {
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: 0, max: 10, noNaN: true }), { minLength: 1, maxLength: 60 }),
        fc.integer({ min: 0, max: 10 }),
        fc.integer({ min: 0, max: 8 }),
        (values, threshold, delay) => {
          const loss = Float64Array.from(values);
          const at = firstHeld(loss, threshold, delay);
          expect(firstHeld(loss, threshold + 1, delay)).toBeGreaterThanOrEqual(at);
          expect(firstHeld(loss, threshold, delay + 1)).toBeGreaterThanOrEqual(at);
        },
      ),
      { seed: 5 },
    );
  });
});
