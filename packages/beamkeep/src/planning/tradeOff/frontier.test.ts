import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { frontier } from './frontier.js';
import type { Setting } from './tradeOff.js';

const setting = (seconds: number, perYear: number, threshold = 35, delay = 10): Setting => ({
  threshold,
  delay,
  seconds,
  early: seconds,
  late: seconds,
  perYear,
});

describe('frontier', () => {
  it('keeps what no other setting beats in both costs, quickest first', () => {
    const kept = frontier([setting(50, 3), setting(40, 10), setting(60, 5), setting(70, 1), setting(80, 1)]);
    expect(kept.map(({ seconds, perYear }) => [seconds, perYear])).toEqual([
      [40, 10],
      [50, 3],
      [70, 1],
    ]);
  });
  it('law: every setting is matched or beaten by one on the frontier, and none on it is beaten', () => {
    fc.assert(
      fc.property(
        fc.array(fc.tuple(fc.integer({ min: 1, max: 30 }), fc.integer({ min: 0, max: 30 })), { maxLength: 40 }),
        (pairs) => {
          const all = pairs.map(([seconds, perYear]) => setting(seconds, perYear));
          const kept = frontier(all);
          for (const { seconds, perYear } of all) {
            expect(kept.some((one) => one.seconds <= seconds && one.perYear <= perYear)).toBe(true);
          }
          for (const one of kept) {
            expect(
              all.some(
                (other) =>
                  other.seconds <= one.seconds &&
                  other.perYear <= one.perYear &&
                  (other.seconds < one.seconds || other.perYear < one.perYear),
              ),
            ).toBe(false);
          }
        },
      ),
      { seed: 5 },
    );
  });
});
