import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { middle } from './middle.js';

describe('middle', () => {
  it('of none there is none', () => expect(middle(new Float64Array(4), 0)).toBeNaN());
  it('law: what sorting gives', () =>
    fc.assert(
      fc.property(fc.array(fc.integer({ min: -9, max: 9 }), { minLength: 1, maxLength: 70 }), (values) => {
        const sorted = values.toSorted((a, b) => a - b);
        const half = sorted.length >> 1;
        const upper = sorted[half] ?? 0;
        const expected = sorted.length % 2 === 1 ? upper : ((sorted[half - 1] ?? 0) + upper) / 2;
        expect(middle(Float64Array.from([...values, 99, -99]), values.length)).toBe(expected + 0);
      }),
      { seed: 4 },
    ));
});
