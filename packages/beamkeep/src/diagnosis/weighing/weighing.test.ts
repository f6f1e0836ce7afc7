import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { causeWords } from '../finding.js';
import { calibrated, crowding, logOdds, plainScores, probability, weighingBy } from './weighing.js';
import weights from './weights.json' with { type: 'json' };

const share = fc.double({ min: 0, max: 1, noNaN: true });

describe('calibrated', () => {
  it('knows every cause, and no other', () => expect(Object.keys(weights.causes)).toEqual([...causeWords]));
  it('law: of two scores of one cause the better is never the less likely', () => {
    fc.assert(
      fc.property(fc.constantFrom(...causeWords), share, share, fc.integer({ min: 1, max: 90 }), (cause, a, b, n) => {
        expect(calibrated(cause, Math.max(a, b), n)).toBeGreaterThanOrEqual(calibrated(cause, Math.min(a, b), n));
      }),
      { seed: 7 },
    );
  });
  it('law: a crowd makes nothing likelier', () => {
    fc.assert(
      fc.property(fc.constantFrom(...causeWords), share, fc.integer({ min: 1, max: 90 }), (cause, score, n) => {
        expect(calibrated(cause, score, n + 1)).toBeLessThanOrEqual(calibrated(cause, score, n));
      }),
      { seed: 7 },
    );
  });
  it('law: what another beam shows as well is never the less likely for it, and smoke never the more or less', () => {
    fc.assert(
      fc.property(fc.constantFrom(...causeWords), share, share, share, (cause, score, a, b) => {
        const beside = (shared: number) => ({ shared, alone: 1 - shared });
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map((v) => calibrated(cause, score, 1, beside(v)));
        expect(more).toBeGreaterThanOrEqual(less as number);
        if (cause === 'smoke-like') expect(more).toBe(calibrated(cause, score, 1));
      }),
      { seed: 7 },
    );
  });
  it('law: a probability, and never certainty', () => {
    fc.assert(
      fc.property(fc.constantFrom(...causeWords), share, (cause, score) => {
        const p = calibrated(cause, score, 1);
        expect(p).toBeGreaterThan(0);
        expect(p).toBeLessThan(1);
      }),
      { seed: 7 },
    );
  });
});

describe('weighingBy', () => {
  it('offset 0 and slope 1 and the others 0 leave a score as it is', () => {
    const lines = Object.fromEntries(
      causeWords.map((cause) => [cause, { offset: 0, slope: 1, crowd: 0, shared: 0, alone: 0 }]),
    ) as Parameters<typeof weighingBy>[0];
    for (const score of [0.01, 0.2, 0.5, 0.9, 0.99])
      expect(weighingBy(lines)('vibration', score, 20)).toBeCloseTo(plainScores('vibration', score, 20), 12);
  });
});

describe('logOdds', () => {
  it('0.75 is three to one', () => expect(logOdds(0.75)).toBeCloseTo(Math.log(3), 12));
  it('is undone by probability', () => expect(probability(logOdds(0.31))).toBeCloseTo(0.31, 12));
  it('stays finite at the ends', () => expect(logOdds(1)).toBe(-logOdds(0)));
});

describe('crowding', () => {
  it('is 0 up to six alike, and grows no more beyond 48', () => {
    expect(crowding(6)).toBe(0);
    expect(crowding(12)).toBeCloseTo(Math.log(2), 12);
    expect(crowding(500)).toBe(crowding(48));
  });
});
