import { describe, expect, it } from 'vitest';
import { at, left, pictured, recordOf } from '../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../tests/diagnosis/typical.js';
import { rowAt } from '../columns/index.js';
import { median } from '../statistics/index.js';
import { isTwoSided, roughFactor } from './roughness.js';

describe('roughness', () => {
  it('is the usual spread of the samples, whatever slope they follow', () => {
    const { rough } = pictured(recordOf((t) => left((t - at(0)) / 3e9), { days: 10, noise: 0.004 }));
    expect(rough.usual / 0.004).toBeGreaterThan(0.7);
    expect(rough.usual / 0.004).toBeLessThan(1.1);
    // A run of twelve samples may be rough by chance.
    const chance = rough.runs.filter((run) => isTwoSided(run, rough.usual)).length;
    expect(chance / rough.runs.length).toBeLessThan(0.1);
  });
  it('raises the bounds within noise of both signs, and leaves them elsewhere', () => {
    const { rough, depth, view } = pictured(typical['electrical-noise']());
    const factor = roughFactor(rough, depth.length);
    expect(factor[rowAt(view.trace.time, at(11))]).toBeGreaterThan(10);
    expect(median(Float64Array.from(factor))).toBe(1);
  });
});
