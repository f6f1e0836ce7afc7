import { describe, expect, it } from 'vitest';
import { equipmentObscuration, largestObscuration, readingObscuration } from './equipmentObscuration.js';

const percent = { signalUnit: 'percent', cleanAir: 100, coveredSubtracted: false } as const;

describe('equipmentObscuration', () => {
  it('derived: a reading of 70 with 4 covered is 31.25 % of true obscuration, 30 % to equipment that keeps the 4', () => {
    expect(equipmentObscuration({ ...percent, covered: 4 }, 1 - 0.3125)).toBeCloseTo(30, 12);
    expect(equipmentObscuration({ ...percent, covered: 4, coveredSubtracted: true }, 1 - 0.3125)).toBeCloseTo(
      31.25,
      12,
    );
  });
  it('is the true one where nothing comes back', () => expect(equipmentObscuration(percent, 0.65)).toBeCloseTo(35, 12));
  it.each([
    { signalUnit: 'decibels', cleanAir: 0, covered: -20 },
    { signalUnit: 'obscuration', cleanAir: 0, covered: 99 },
    { signalUnit: 'counts', cleanAir: 3000, covered: 30 },
    { signalUnit: 'decibels', cleanAir: -3, covered: -23 },
  ] as const)('puts readings of any unit into power first: %j', (readings) =>
    expect(equipmentObscuration({ ...readings, coveredSubtracted: false }, 0.5)).toBeCloseTo(49.5, 12),
  );
  it('keeps levels above clean air', () => expect(equipmentObscuration(percent, 1.02)).toBeCloseTo(-2, 12));
  it('missing stays missing', () => expect(equipmentObscuration(percent, Number.NaN)).toBeNaN());
});

describe('largestObscuration', () => {
  it('derived: with a stray return of 12 % of clean air, total smoke reads 88 %', () =>
    expect(largestObscuration({ ...percent, covered: 12 })).toBeCloseTo(88, 12));
  it('is 100 % where the covered reading is taken off', () =>
    expect(largestObscuration({ ...percent, covered: 12, coveredSubtracted: true })).toBe(100));
});

describe('readingObscuration', () => {
  const reading = (beam: object, value: number) =>
    readingObscuration({ signalUnit: 'counts', cleanAir: 2000, coveredSubtracted: false, ...beam })(value);
  it('derived: of 2000 counts, 1300 are 35 %', () => expect(reading({}, 1300)).toBeCloseTo(35, 12));
  it('derived: with 100 counts taken off, 1050 stand half way from 100 to 2000', () =>
    expect(reading({ covered: 100, coveredSubtracted: true }, 1050)).toBeCloseTo(50, 12));
  it('takes nothing off where the equipment does not, or where nothing was measured', () => {
    expect(reading({ covered: 100 }, 1300)).toBeCloseTo(35, 12);
    expect(reading({ coveredSubtracted: true }, 1300)).toBeCloseTo(35, 12);
  });
  it('knows nothing without a clean-air reading', () => expect(reading({ cleanAir: Number.NaN }, 1300)).toBeNaN());
});
