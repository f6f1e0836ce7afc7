import { describe, expect, it } from 'vitest';
import { plainScenario } from '../plainScenario.js';
import type { BeamPlan } from '../scenario.js';
import { decimals, inUnit, stepShare } from './unit.js';

const [plain] = plainScenario().beams as [BeamPlan];
const beam = (changes: Partial<BeamPlan>): BeamPlan => ({ ...plain, ...changes });

describe('inUnit', () => {
  it('tells a share of clean air in each unit', () => {
    expect(inUnit(beam({ step: 0.1 }), 0.65)).toBeCloseTo(65, 9);
    expect(inUnit(beam({ unit: 'obscuration', cleanAir: 0, step: 0.1 }), 0.65)).toBeCloseTo(35, 9);
    expect(inUnit(beam({ unit: 'counts', cleanAir: 2000, step: 1 }), 0.65)).toBe(1300);
    expect(inUnit(beam({ unit: 'decibels', cleanAir: 0, step: 0.01 }), 0.65)).toBeCloseTo(-1.87, 9); // 35 % is 1.871 dB
  });

  it('rounds to the step of the scale and keeps missing samples missing', () => {
    expect(inUnit(beam({ step: 1 }), 0.6549)).toBe(65);
    expect(inUnit(beam({}), Number.NaN)).toBeNaN();
  });

  it('shows no negative counts', () =>
    expect(inUnit(beam({ unit: 'counts', cleanAir: 2000, step: 1 }), -0.01)).toBe(0));
});

describe('stepShare', () => {
  it('tells a step as a share of the clean-air span', () => {
    expect(stepShare(beam({ step: 1, covered: 0.2 }))).toBeCloseTo(0.0125, 12);
    expect(stepShare(beam({ unit: 'decibels', step: 0.05 }))).toBeCloseTo(0.01145, 5);
  });
});

describe('decimals', () => {
  it('counts what a step needs', () => expect([1, 0.5, 0.01].map(decimals)).toEqual([0, 1, 2]));
});
