import { describe, expect, it } from 'vitest';
import { at, pictured, recordOf, rise, viewed } from '../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../tests/diagnosis/typical.js';
import { hour, minute } from '../columns/index.js';
import { bounds, smoothingRows } from './excursions.js';

const excursionsOf = (level: (t: number) => number, noise = 0.001) =>
  pictured(recordOf(level, { days: 12, noise })).excursions;

describe('findExcursions', () => {
  it('finds the two edges of an object to the sample, and its bottom', () => {
    const [e, other] = excursionsOf((t) => (t >= at(6, 10) && t < at(6, 11) ? 0.6 : 1));
    expect(other).toBeUndefined();
    expect(e).toMatchObject({
      start: at(6, 10),
      end: at(6, 11) - 5 * minute,
      sign: 1,
      onsetRows: 1,
      recoveryRows: 1,
      open: false,
    });
    expect(e?.bottom).toBeCloseTo(0.4, 2);
    expect(e?.deepSamples).toBe(12);
    expect(e?.unevenness).toBeLessThan(0.02);
    expect(e?.raggedness).toBeCloseTo(1, 1);
  });
  it('tells a slow onset from a quick recovery', () => {
    const [e] = excursionsOf((t) => (t < at(6, 10) || t >= at(6, 14) ? 1 : 1 - 0.4 * rise(t, at(6, 10), at(6, 12))));
    expect((e?.onset ?? 0) / hour).toBeGreaterThan(0.5);
    expect((e?.onset ?? 0) / hour).toBeLessThan(1.5);
    expect(e?.recoveryRows).toBe(1);
  });
  it('finds what raises the level, with the other sign', () =>
    expect(excursionsOf((t) => (t >= at(6, 10) && t < at(6, 11) ? 1.1 : 1))).toMatchObject([{ sign: -1 }]));
  it('finds a single sample, clear of the noise', () => {
    expect(excursionsOf((t) => (t === at(6, 10) ? 0.9 : 1))).toMatchObject([
      { start: at(6, 10), end: at(6, 10), deepSamples: 1 },
    ]);
    expect(excursionsOf((t) => (t === at(6, 10) ? 0.995 : 1))).toEqual([]);
  });
  it('stays open where the log ends before the level came back', () =>
    expect(excursionsOf((t) => (t >= at(11, 23) ? 0.6 : 1)).at(-1)).toMatchObject({ open: true }));
  it('finds none in noise', () => expect(excursionsOf(() => 1, 0.005)).toEqual([]));
  it('counts the humps of a ragged one', () => {
    const [e] = excursionsOf((t) =>
      t > at(6, 8) && t < at(6, 16) ? 0.8 + 0.1 * Math.cos((t / hour) * 2 * Math.PI) : 1,
    );
    expect(e?.raggedness).toBeGreaterThan(2.5);
  });
  it('takes hours of a fast and noisy log for no more ragged than they are', () => {
    const night = (t: number) => 1 - 0.05 * rise(t, at(1, 1), at(1, 4)) * (1 - rise(t, at(1, 7), at(1, 9)));
    const found = pictured(recordOf(night, { days: 3, intervalSeconds: 60, noise: 0.003 })).excursions;
    expect(Math.max(...found.map((e) => e.depth))).toBeGreaterThan(0.04);
    for (const e of found) expect(e.raggedness).toBeLessThan(2);
  });
  it('law: none of one sign overlaps another', () => {
    for (const cause of ['process-aerosol', 'condensation', 'vibration', 'electrical-noise'] as const) {
      const found = pictured(typical[cause]()).excursions;
      for (const sign of [1, -1]) {
        const own = found.filter((e) => e.sign === sign);
        for (let k = 1; k < own.length; k++) expect(own[k]?.from).toBeGreaterThan(own[k - 1]?.to ?? 0);
      }
    }
  });
});

describe('bounds', () => {
  it('are never under 1.5 % or 1.5 steps of the scale, and grow with the noise', () => {
    const of = (noise: number, quantum = 0) => bounds(viewed(recordOf(() => 1, { days: 4, noise, quantum })));
    expect(of(0.0002).high).toBe(0.015);
    expect(of(0.0002, 0.02).high).toBeGreaterThanOrEqual(0.03);
    expect(of(0.03).high).toBeGreaterThan(of(0.001).high);
    expect(of(0.03).spike).toBeGreaterThanOrEqual(0.15);
  });
  it('smooth over an odd number of rows, three to fifteen', () =>
    expect([100, 1000, 20_000, 60_000, 900_000].map(smoothingRows)).toEqual([15, 15, 9, 3, 3]));
});
