import * as fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { around, kept } from './moveWindow.js';

const whole = { from: 0, to: 1_000_000_000 };

describe('kept', () => {
  it('the whole log is no window', () => {
    expect(kept(whole, whole)).toBeNull();
    expect(kept({ from: -5, to: 2_000_000_000 }, whole)).toBeNull();
  });

  it('law: a window lies within the log and keeps its length', () => {
    fc.assert(
      fc.property(fc.integer({ min: -2e9, max: 2e9 }), fc.integer({ min: 1, max: 9e8 }), (from, length) => {
        const window = kept({ from, to: from + length }, whole);
        expect(window?.from).toBeGreaterThanOrEqual(0);
        expect(window?.to).toBeLessThanOrEqual(whole.to);
        expect((window?.to ?? 0) - (window?.from ?? 0)).toBe(Math.max(10_000, length));
      }),
      { seed: 7, numRuns: 200 },
    );
  });
});

describe('around', () => {
  it('leaves room about a stretch, and more than its own length about an instant', () => {
    const window = around({ start: 500_000_000, end: 500_000_000 }, whole);
    expect(window?.from).toBeLessThan(500_000_000);
    expect(window?.to).toBeGreaterThan(500_000_000);
  });
});
