import { describe, expect, it } from 'vitest';
import { ticks } from './ticks.js';

describe('ticks', () => {
  it.each([
    [0, 137, 5, [0, 50, 100]],
    [-1.5, 2, 7, [-1.5, -1, -0.5, 0, 0.5, 1, 1.5, 2]],
    [0, 1, 5, [0, 0.2, 0.4, 0.6, 0.8, 1]],
    [3, 3, 5, []],
    [0, Number.POSITIVE_INFINITY, 5, []],
  ])('%f to %f, about %f', (low, high, wanted, expected) => expect(ticks(low, high, wanted)).toEqual(expected));
});
