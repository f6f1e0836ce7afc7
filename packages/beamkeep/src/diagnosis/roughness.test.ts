import { describe, expect, it } from 'vitest';
import { at, chanceOf, left, pictured, recordOf } from '../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../tests/diagnosis/typical.js';
import { minute, rowAt } from '../columns/index.js';
import { median } from '../statistics/index.js';
import { isTwoSided, noiseBefore, roughFactor } from './roughness.js';

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
    const factor = roughFactor(rough, depth.length, view.sampleNoise);
    expect(factor[rowAt(view.trace.time, at(11))]).toBeGreaterThan(10);
    expect(median(Float64Array.from(factor))).toBe(1);
  });
  it('noise that the end of the scale cuts off is of both signs; dust under a scale that ends at clean air is not', () => {
    const readings = (end: number, worse: (chance: number) => number) =>
      pictured(
        recordOf(
          (t) => {
            const row = Math.floor(t / (5 * minute));
            const more = t > at(6) && t < at(7) ? worse(chanceOf(row, 4) - 0.5) : 0;
            return Math.min(end, 1 + 0.007 * (chanceOf(row, 5) - 0.5) + more);
          },
          { days: 20, noise: 0 },
        ),
      ).rough;
    const within = (of: ReturnType<typeof readings>) => of.runs.filter((run) => run.spread > 10 * of.usual);
    const noise = readings(1.02, (chance) => 0.6 * chance);
    const dust = readings(1, (chance) => -0.6 * Math.abs(chance));
    expect(within(noise).length).toBeGreaterThan(10);
    expect(within(noise).filter((run) => run.cutOff).length / within(noise).length).toBeGreaterThan(0.8);
    expect(within(dust).length).toBeGreaterThan(10);
    expect(within(dust).filter((run) => run.cutOff)).toEqual([]);
  });
  it('raises no bound where noise fills most of a log: it is the usual there', () => {
    const { rough, depth } = pictured(typical['electrical-noise']());
    const widest = Math.max(...rough.runs.map((run) => run.spread));
    expect(Math.max(...roughFactor(rough, depth.length, widest))).toBeLessThan(1.5);
  });
});

describe('noiseBefore', () => {
  // Noise from day 4 on, and an hour of a quarter of the light lost before it.
  const noisy = (t: number): number =>
    (t >= at(2, 10) && t < at(2, 11) ? 0.75 : 1) + (t > at(4) ? 0.1 * (chanceOf(Math.floor(t / minute), 2) - 0.5) : 0);
  const { rough, view } = pictured(recordOf(noisy, { days: 8, intervalSeconds: 60, noise: 0.001 }));
  const before = (instant: number) => noiseBefore(rough, rowAt(view.trace.time, instant)) ?? Number.NaN;

  it('is that of the calmest run before a row, whatever comes after', () => {
    expect(before(at(4))).toBeLessThan(0.0015);
    expect(before(at(5)) / (0.1 / Math.sqrt(12))).toBeGreaterThan(0.5);
    expect(before(at(5)) / (0.1 / Math.sqrt(12))).toBeLessThan(1.1);
  });
  it('is as much too small as too large in noise alone, whose calmest run is calmer', () => {
    const { rough: own, view: its } = pictured(recordOf(() => 1, { days: 30, noise: 0.006 }));
    const ratios = its.trace.time.slice(100).map((_, k) => (noiseBefore(own, k + 100) ?? Number.NaN) / 0.006);
    expect(median(ratios)).toBeGreaterThan(0.93);
    expect(median(ratios)).toBeLessThan(1.07);
  });
  it('counts no edge of an object', () => expect(before(at(2, 11) + 5 * minute)).toBeLessThan(0.002));
  it('is not known where the log begins', () => expect(noiseBefore(rough, 3)).toBeUndefined());
});
