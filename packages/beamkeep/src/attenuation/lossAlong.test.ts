import { describe, expect, it } from 'vitest';
import { lossAlong } from './lossAlong.js';
import { decibelsToPercent } from './reading.js';

const plume = { extinctionPerMetre: 0.2, lengthMetres: 4 };
const haze = { extinctionPerMetre: 0.01, lengthMetres: 46 };

describe('lossAlong', () => {
  it('law: losses of joined stretches add, in any order', () => {
    const apart = lossAlong([plume], 1) + lossAlong([haze], 1);
    expect(lossAlong([plume, haze], 1)).toBeCloseTo(apart, 14);
    expect(lossAlong([haze, plume], 1)).toBeCloseTo(apart, 14);
  });

  it('law: crossing twice doubles the decibels', () => {
    expect(lossAlong([plume, haze], 2)).toBeCloseTo(2 * lossAlong([plume, haze], 1), 14);
  });

  it('is 0 without stretches, endless through darkness, missing where a stretch is', () => {
    expect(lossAlong([], 1)).toBe(0);
    expect(
      decibelsToPercent(lossAlong([haze, { extinctionPerMetre: Number.POSITIVE_INFINITY, lengthMetres: 1 }], 1)),
    ).toBe(100);
    expect(lossAlong([haze, { extinctionPerMetre: Number.POSITIVE_INFINITY, lengthMetres: 0 }], 1)).toBe(
      lossAlong([haze], 1),
    );
    expect(lossAlong([haze, { extinctionPerMetre: Number.NaN, lengthMetres: 1 }], 1)).toBeNaN();
  });

  it('says what must change', () => {
    expect(() => lossAlong([{ extinctionPerMetre: -1, lengthMetres: 1 }], 1)).toThrow('extinction -1 1/m');
    expect(() => lossAlong([{ extinctionPerMetre: 1, lengthMetres: -1 }], 1)).toThrow('length -1 m');
  });
});
