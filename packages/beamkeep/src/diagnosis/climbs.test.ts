import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { at, left, recordOf, viewed } from '../../../../tests/diagnosis/kit.js';
import { minute } from '../columns/index.js';
import { findClimbs } from './climbs.js';

/** Growths of a loss alone: nothing slow, nothing daily. */
function grown(loss: (minutes: number) => number, intervalSeconds = 60, noise = 0.0003) {
  const view = viewed(recordOf((t) => left(loss((t - at(0)) / minute)), { days: 1, intervalSeconds, noise }));
  return findClimbs(view, view.loss, () => view.sampleNoise);
}
const climbsOf = (...of: Parameters<typeof grown>) => grown(...of).climbs;

const ramp = (begin: number, pace: number, most: number) => (m: number) =>
  Math.min(most, Math.max(0, m - begin) * pace);

describe('findClimbs', () => {
  it('finds growth somewhat over 0.02 dB a minute, and none somewhat under it', () => {
    expect(climbsOf(ramp(300, 0.024, 1))).toHaveLength(1);
    expect(climbsOf(ramp(300, 0.016, 1))).toEqual([]);
  });
  it('law: tells begin, growth and time of a ramp', () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 100, max: 900 }),
        fc.double({ min: 0.05, max: 0.4, noNaN: true }),
        (begin, pace) => {
          const [climb] = climbsOf(ramp(begin, pace, 1.5));
          expect(climb).toBeDefined();
          if (climb === undefined) return;
          expect(Math.abs(climb.from - begin)).toBeLessThanOrEqual(5);
          expect(climb.rise).toBeCloseTo(1.5, 1);
          expect(climb.lost).toBeCloseTo(1 - left(1.5), 1);
          expect(climb.time / minute / ((0.8 * 1.5) / pace)).toBeGreaterThan(0.6);
          expect(climb.time / minute / ((0.8 * 1.5) / pace)).toBeLessThan(1.4);
        },
      ),
      { seed: 1, numRuns: 25 },
    ));
  it('counts a growth that dithers as one', () =>
    expect(climbsOf((m) => ramp(300, 0.03, 1.5)(m) * (1 + (m < 350 ? 0.1 * Math.sin(m / 3) : 0)))).toHaveLength(1));
  it('finds growth to 4 %, none to 2 %', () => {
    expect(climbsOf(ramp(300, 0.05, -10 * Math.log10(0.96)))).toHaveLength(1);
    expect(climbsOf(ramp(300, 0.05, -10 * Math.log10(0.98)))).toEqual([]);
  });
  it('tells growth to 2 % apart as a lesser one, and none to 1 %', () => {
    expect(grown(ramp(300, 0.05, -10 * Math.log10(0.98))).lesser).toHaveLength(1);
    expect(grown(ramp(300, 0.05, -10 * Math.log10(0.99))).lesser).toEqual([]);
    expect(grown(ramp(300, 0.05, -10 * Math.log10(0.96))).lesser).toEqual([]);
  });
  it('finds growth of seconds in a log of a second', () => {
    const [climb] = climbsOf((m) => ramp(5, 12, 3)(m), 1);
    expect(climb?.rise).toBeCloseTo(3, 0);
  });
  it('finds none in noise, however long', () => expect(climbsOf(() => 0, 60, 0.004)).toEqual([]));
  it('asks more where the samples before are rougher', () => {
    const view = viewed(
      recordOf((t) => left(ramp(300, 0.05, 0.4)((t - at(0)) / minute)), { days: 1, intervalSeconds: 60 }),
    );
    expect(findClimbs(view, view.loss, () => 0.001).climbs).toHaveLength(1);
    expect(findClimbs(view, view.loss, () => 0.03).climbs).toEqual([]);
  });
  it.each([2, 3, 5, 8])('asks a growth of two samples to be held by four: %i', (samples) => {
    const held = climbsOf((m) => (m === 300 ? 0.4 : m > 300 && m <= 300 + samples ? 1 : 0));
    expect(held).toHaveLength(samples < 4 ? 0 : 1);
  });
  it('law: leaves out the growths of a swing, and keeps one far greater amid it', () =>
    fc.assert(
      fc.property(
        fc.integer({ min: 10, max: 30 }),
        fc.double({ min: 0.1, max: 0.3, noNaN: true }),
        fc.integer({ min: 400, max: 1000 }),
        (period, size, begin) => {
          const swing = (m: number) => size * (1 + Math.sin((2 * Math.PI * m) / period));
          // Near the ends of the log a crest has too few others on either side.
          expect(climbsOf(swing).filter((c) => c.from > 200 && c.from < 1200)).toEqual([]);
          const both = climbsOf((m) => swing(m) + ramp(begin, 0.4, 2.5)(m));
          expect(both.some((c) => c.to > begin && c.from < begin + period && c.rise > 1.5)).toBe(true);
        },
      ),
      { seed: 1, numRuns: 25 },
    ));
});
