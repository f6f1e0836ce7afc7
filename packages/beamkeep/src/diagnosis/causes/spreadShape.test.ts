import { describe, expect, it } from 'vitest';
import { chanceOf, normalOf } from '../../../../../tests/diagnosis/kit.js';
import type { Run } from '../roughness.js';
import { leaning, shaken, spreadShape } from './spreadShape.js';

/** Runs of twelve samples, as of a log that is sampled each minute or more slowly. */
const rows = 12;
const count = 60;
const shapeOf = (depthAt: (row: number) => number) => {
  const depth = Float64Array.from({ length: rows * count }, (_, row) => depthAt(row));
  const runs = Array.from({ length: count }, (_, k): Run => {
    const own = depth.subarray(k * rows, (k + 1) * rows);
    return {
      from: k * rows,
      to: (k + 1) * rows - 1,
      spread: 0,
      middle: 0,
      up: Math.max(0, -Math.min(...own)),
      down: Math.max(0, ...own),
      cutOff: false,
    };
  });
  return spreadShape(depth, runs);
};
/** A sine met at instants that follow no order. */
const phase = (row: number): number => 2 * Math.PI * chanceOf(row, 3);

describe('spreadShape', () => {
  it('is that of a sine whose samples follow no order, and of normal noise', () => {
    const sine = shapeOf((row) => 0.05 * Math.sin(phase(row)));
    expect(Math.abs(sine.noisiness)).toBeLessThan(0.3);
    expect(Math.abs(sine.alike)).toBeLessThan(0.15);
    expect(sine.fromPeak).toBe(0);
    const noise = shapeOf((row) => 0.02 * normalOf(row, 4));
    // The share of an expectation: 1, give or take what sixty runs leave to chance.
    expect(Math.abs(noise.noisiness - 1)).toBeLessThan(0.25);
    expect(shaken(sine, 1)).toBeGreaterThan(0.8);
    expect(shaken(noise, 1)).toBeLessThan(0.5);
  });
  it('knows a swing about the peak, which takes light by either turn', () => {
    const peak = shapeOf((row) => 0.05 * Math.sin(phase(row)) ** 2 + 0.001 * normalOf(row));
    // A share of 0.205 of a squared sine lies below a tenth: one of twelve samples does in 0.936 of the runs.
    expect(Math.abs(peak.fromPeak - 0.936)).toBeLessThan(0.1);
    expect(shaken(peak, 0)).toBeGreaterThan(0.7);
  });
  it('knows it too where the usual level lies somewhat under the peak: nothing between that and what goes both ways', () => {
    const { fromPeak } = shapeOf((row) => 0.05 * Math.sin(phase(row)) ** 2 - 0.013);
    // Up to a third of what it goes down: two-sided begins at 0.4.
    expect(fromPeak).toBeGreaterThan(0.7);
  });
  it('calls no puff and no dithering smoke shaken: neighbours are alike, or none comes back', () => {
    const puffs = shapeOf((row) => 0.05 * Math.exp(-(row % 7) / 3));
    expect(shaken(puffs, 0)).toBe(0);
    const smoke = shapeOf((row) => 0.2 + 0.02 * Math.sin(phase(row)));
    expect(smoke.fromPeak).toBe(0);
    expect(shaken(smoke, 0)).toBe(0);
  });
  it('leans on the beam the more, the fewer runs a stretch has', () => {
    const own = { noisiness: 0, alike: 0, fromPeak: 1 };
    const beam = { noisiness: 1, alike: 0.4, fromPeak: 0 };
    expect(leaning(own, beam, 8)).toEqual({ noisiness: 0.5, alike: 0.2, fromPeak: 0.5 });
    expect(leaning(own, beam, 72).noisiness).toBeCloseTo(0.1, 12);
  });
});
