import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { ticks } from './ticks.js';

describe('ticks', () => {
  it.each([
    [0, 137, 5, [0, 50, 100]],
    [-1.5, 2, 7, [-1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2]],
    [0, 1, 5, [0, 0.2, 0.4, 0.6, 0.8, 1]],
    [0, 9, 1, [0]], // by tens
    [0, 1000, 10, [0, 100, 200, 300, 400, 500, 600, 700, 800, 900, 1000]],
    [0.3, 0.7, 4, [0.3, 0.4, 0.5, 0.6, 0.7]],
    [-5, 105, 4, [0, 50, 100]],
    [0.0012, 0.0029, 3, [0.002]],
    [5, 1, 5, []],
    [3, 3, 5, []],
    [0, Number.POSITIVE_INFINITY, 5, []],
  ])('%f to %f, about %f', (low, high, wanted, expected) => expect(ticks(low, high, wanted)).toEqual(expected));
  it('law: about as many as are wanted, evenly apart, none outside the range', () =>
    fc.assert(
      fc.property(
        fc.double({ min: -1e4, max: 1e4, noNaN: true }),
        fc.double({ min: 1e-3, max: 1e4, noNaN: true }),
        fc.integer({ min: 2, max: 12 }),
        (low, range, wanted) => {
          const all = ticks(low, low + range, wanted);
          expect(all.length).toBeLessThanOrEqual(wanted + 1);
          expect(all.length).toBeGreaterThanOrEqual(Math.floor(wanted / 2.5));
          for (const tick of all) {
            expect(tick).toBeGreaterThanOrEqual(low - 1e-6 * range);
            expect(tick).toBeLessThanOrEqual(low + range + 1e-6 * range);
          }
          const [first = 0, second = 0] = all;
          all.forEach((tick, at) => {
            expect(Math.abs(tick - first - at * (second - first))).toBeLessThan(1e-6 * range);
          });
        },
      ),
      { seed: 8 },
    ));
});
