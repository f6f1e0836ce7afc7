import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { aliasFrequency } from './aliasFrequency.js';

describe('aliasFrequency', () => {
  it('law: a cosine and its alias give the same samples', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 60, noNaN: true }),
        fc.double({ min: 0.5, max: 20, noNaN: true }),
        (f, rate) => {
          const alias = aliasFrequency(f, rate);
          expect(alias).toBeLessThanOrEqual(rate / 2);
          for (let i = 0; i < 5; i++) {
            const at = (frequency: number) => Math.cos((2 * Math.PI * frequency * i) / rate);
            expect(at(alias)).toBeCloseTo(at(f), 9);
          }
        },
      ),
      { seed: 79 },
    );
  });
});
