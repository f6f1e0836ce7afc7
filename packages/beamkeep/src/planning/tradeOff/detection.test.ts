import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { detection, fireCurves, looksBlocked, smokeSpan } from './detection.js';
import { fireFromWords } from './fireFromWords.js';

const beam = { layout: 'reflective', separation: 60, wavelength: 880, height: 11.7 } as const;
const hall = { ceiling: 12, area: 1800 };
const places = { nearest: 0, usual: 3.75, farthest: 7.5 };
const wood = fireCurves(beam, hall, places, { fire: fireFromWords('medium:wood'), diameter: 0.5, seconds: 400 });

describe('detection', () => {
  it('brackets: early no later than the middle, late no earlier', () => {
    const { seconds, heat } = detection(wood, 35, 10);
    expect(seconds.early).toBeLessThanOrEqual(seconds.value);
    expect(seconds.late).toBeGreaterThanOrEqual(seconds.value);
    expect(heat.value).toBeCloseTo(wood.fire.heat(seconds.value), 9);
  });

  it('law: a higher threshold or a longer delay is never earlier, nor with a smaller fire', () => {
    fc.assert(
      fc.property(fc.double({ min: 3, max: 80, noNaN: true }), fc.integer({ min: 0, max: 60 }), (threshold, delay) => {
        const [now, higher, longer] = [
          detection(wood, threshold, delay),
          detection(wood, threshold + 5, delay),
          detection(wood, threshold, delay + 5),
        ];
        for (const other of [higher, longer]) {
          for (const run of ['value', 'early', 'late'] as const) {
            expect(other.seconds[run]).toBeGreaterThanOrEqual(now.seconds[run]);
            expect(other.heat[run]).toBeGreaterThanOrEqual(now.heat[run]);
          }
        }
      }),
      { seed: 5 },
    );
  });

  it('a fire that is not found while it is watched has no time and no size', () => {
    const small = fireCurves(beam, hall, places, { fire: fireFromWords('1kW:wood'), diameter: 0.2, seconds: 60 });
    expect(detection(small, 35, 10)).toEqual({
      seconds: { value: Number.POSITIVE_INFINITY, early: Number.POSITIVE_INFINITY, late: Number.POSITIVE_INFINITY },
      heat: { value: Number.POSITIVE_INFINITY, early: Number.POSITIVE_INFINITY, late: Number.POSITIVE_INFINITY },
    });
  });

  it('the span of smoke holds yield, heat and extinction (8700 +- 1100 m2/kg)', () => {
    const { low, high } = smokeSpan(fireFromWords('fast:heptane'));
    expect(low).toBeCloseTo((1 - 1100 / 8700) * 1, 6);
    expect(high).toBeCloseTo((0.037 / 0.0149) * (44.6 / 41.2) * (1 + 1100 / 8700), 6);
  });

  it('tells smoke that comes so quickly that it could pass for a blocked beam', () => {
    expect(looksBlocked(wood, 90)).toBe(false);
    const sudden = { ...wood, early: Float64Array.from([0, 0, 0, 12, 30]) };
    expect(looksBlocked(sudden, 90)).toBe(true);
  });

  it('says what must change', () => {
    const wrong = { nearest: 5, usual: 3, farthest: 7 };
    expect(() => fireCurves(beam, hall, wrong, { fire: fireFromWords('fast'), diameter: 0.5, seconds: 10 })).toThrow(
      'places 5, 3, 7 m must rise from 0',
    );
  });
});
