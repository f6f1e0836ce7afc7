import { describe, expect, it } from 'vitest';
import { at, diagnosed, monday, normalOf, pictured, recordOf, stated } from '../../../../../tests/diagnosis/kit.js';
import { minute } from '../../columns/index.js';
import { isShaking, roughStretches, shakingOrNoise } from './roughStretches.js';

/** Ten minutes at 20 Hz. */
const fast = { days: 10 / 1440, intervalSeconds: 0.05 };
const shaking =
  (amplitude: number, hertz: number, from = 2, to = 8) =>
  (t: number) => {
    const m = (t - monday) / minute;
    return 1 + (m > from && m < to ? amplitude * Math.sin((2 * Math.PI * hertz * (t - monday)) / 1000) : 0);
  };

describe('roughStretches', () => {
  it('finds a swing no larger than the noise, on a fast log', () => {
    const [one, second] = roughStretches(pictured(recordOf(shaking(0.012, 3.1), { ...fast, noise: 0.008 })));
    expect(second).toBeUndefined();
    expect(one && isShaking(one)).toBe(true);
    expect(Math.abs((one?.start ?? 0) - monday - 2 * minute)).toBeLessThan(minute);
    expect(Math.abs((one?.end ?? 0) - monday - 8 * minute)).toBeLessThan(minute);
  });
  it('finds none in noise alone', () => {
    for (const seed of [1, 2, 3, 4])
      expect(roughStretches(pictured(recordOf(() => 1, { ...fast, noise: 0.008, seed })))).toEqual([]);
  });
  it('finds none in the noise of a month, among whose many runs some are rough by chance', () => {
    let rough = 0;
    for (let seed = 1; seed <= 12; seed++) {
      const picture = pictured(recordOf(() => 1, { days: 30, noise: 0.006, seed }));
      rough += picture.rough.runs.filter((run) => run.spread > 2 * picture.rough.usual).length;
      expect(roughStretches(picture)).toEqual([]);
    }
    expect(rough).toBeGreaterThan(100);
  });
  it('finds the same noise grown by half for six hours', () => {
    const grown = (t: number): number => (t > at(9) && t < at(9, 6) ? 0.012 * normalOf(Math.floor(t / minute), 3) : 0);
    const [one] = roughStretches(pictured(recordOf((t) => 1 + grown(t), { days: 30, noise: 0.006 })));
    expect(one && Math.abs(one.start - at(9)) < 90 * minute && Math.abs(one.end - at(9, 6)) < 90 * minute).toBe(true);
  });
  it('finds none in a slow growth', () => {
    const grown = (t: number) => 1 - 0.2 * Math.min(1, Math.max(0, (t - monday) / minute - 3) / 4) ** 2;
    expect(stated(diagnosed(recordOf(grown, { ...fast, noise: 0.004 })), 'vibration')).toEqual([]);
  });
  it('knows a swing whose period is as long as a run of samples', () => {
    const [one] = roughStretches(pictured(recordOf(shaking(0.04, 0.2), fast)));
    expect(one && isShaking(one)).toBe(true);
  });
  it('knows a mount that shakes across the peak, which dips twice in a turn, unequally', () => {
    const loss = (t: number): number => 0.06 * (0.18 + Math.sin((2 * Math.PI * 1.05 * (t - monday)) / 1000)) ** 2;
    const across = (t: number) => (shaking(1, 1)(t) === 1 ? 1 : 1 - loss(t));
    const [one] = roughStretches(pictured(recordOf(across, fast)));
    expect(one && isShaking(one)).toBe(true);
    expect(one?.swing).toBeGreaterThan(0.6);
  });
  it('takes a few stretches that swing among many that do not for noise', () => {
    // Noise on twelve days, and among it one short stretch that swings.
    const rough = (t: number): number => {
      if (t > at(6, 10) && t < at(6, 13)) return 0.02 * Math.sin((2 * Math.PI * (t - at(6))) / (14 * minute));
      return t > at(1) && t < at(12) ? 0.02 * normalOf(Math.floor(t / minute), 8) : 0;
    };
    const { shaking, noise } = shakingOrNoise(
      pictured(recordOf((t) => 1 + rough(t), { days: 14, intervalSeconds: 60 })),
    );
    expect(shaking).toEqual([]);
    expect(noise.length).toBeGreaterThan(0);
  });
  it('takes two runs of which but one spreads both ways for no noise', () => {
    // An hour is a run of twelve samples: by this seed the first spreads both ways. The second only loses light, as dust or what a fit leaves behind.
    const rough = (only: (v: number) => number) => (t: number) => {
      const v = 0.03 * normalOf(Math.floor(t / minute), 14);
      return t < at(5) || t >= at(5, 2) ? 1 : t < at(5, 1) ? 1 + v : 1 + only(v);
    };
    const noiseOf = (only: (v: number) => number) => {
      const picture = pictured(recordOf(rough(only), { days: 10 }));
      return [roughStretches(picture).map((r) => r.twoSided), shakingOrNoise(picture).noise.length];
    };
    expect(noiseOf((v) => -Math.abs(v))).toEqual([[0.5], 0]);
    expect(noiseOf((v) => v)).toEqual([[1], 1]);
  });
});
