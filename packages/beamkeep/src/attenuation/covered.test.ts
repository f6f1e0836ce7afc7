import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { apparentObscuration, levelToReading, readingToLevel } from './covered.js';

describe('covered reading', () => {
  it('takes nothing off where nothing comes back', () => {
    expect(readingToLevel(70, 100)).toBe(0.7);
    expect(levelToReading(0.5, 2000)).toBe(1000);
    expect(apparentObscuration(35, 100)).toBeCloseTo(35, 12);
  });

  it('lets readings pass both ends, and stay missing', () => {
    expect(readingToLevel(105, 100, 4)).toBeGreaterThan(1);
    expect(readingToLevel(3, 100, 4)).toBeLessThan(0);
    expect(readingToLevel(Number.NaN, 100, 4)).toBeNaN();
    expect(levelToReading(Number.NaN, 100, 4)).toBeNaN();
  });

  it('law: reading to level and back', () => {
    const share = fc.double({ min: 0, max: 0.9, noNaN: true });
    fc.assert(
      fc.property(fc.double({ min: 1, max: 5000, noNaN: true }), share, share, (cleanAir, covered, reading) => {
        const level = readingToLevel(reading * cleanAir, cleanAir, covered * cleanAir);
        expect(levelToReading(level, cleanAir, covered * cleanAir)).toBeCloseTo(reading * cleanAir, 8);
      }),
      { seed: 20270103 },
    );
  });

  it('law: equipment that does not subtract never reads more than there is', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 100, noNaN: true }),
        fc.double({ min: 0, max: 99, noNaN: true }),
        (percent, covered) => {
          expect(apparentObscuration(percent, 100, covered)).toBeLessThanOrEqual(percent + 1e-9);
        },
      ),
      { seed: 20270104 },
    );
  });

  it('says what must change', () => {
    expect(() => readingToLevel(50, 100, 120)).toThrow('covered is 120, not below cleanAir (100)');
    expect(() => levelToReading(0.5, 100, 100)).toThrow('covered is 100, not below cleanAir (100)');
    expect(() => apparentObscuration(35, -1, -5)).toThrow('cleanAir -1 must be more than 0');
  });
});
