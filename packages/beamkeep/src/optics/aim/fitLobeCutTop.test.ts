import { describe, expect, it } from 'vitest';
import { degrees, kinds, lobe, wide } from '../../../../../tests/optics/scans.js';
import { normalNoise } from '../../statistics/normalNoise.js';
import { fitLobe } from './fitLobe.js';
import { lobeLevel } from './lobeModel.js';

describe('a top that is cut off', () => {
  /** Of a lobe about a place of the scan, cut at a level: how many readings were cut, and whether that was seen. */
  const cut = (angles: Float64Array, halfAngle: number, centre: number, most: number) => {
    const whole = lobeLevel(lobe({ centre: [centre], halfAngle: [halfAngle] }), [angles]);
    const fit = fitLobe(
      angles,
      whole.map((value) => Math.min(value, most)),
    );
    return { readings: whole.filter((value) => value > most).length, seen: kinds(fit).includes('clipped') };
  };
  it('matters from 2 % of the peak on', () => {
    expect(cut(wide, 0.8, 0.1, 97.5)).toEqual({ readings: 3, seen: true });
    expect(cut(wide, 0.8, 0.1, 98.5)).toEqual({ readings: 3, seen: false });
  });
  it('has no say: the sides alone tell the lobe, and how much is lost', () => {
    const tops = lobeLevel(lobe(), [wide]).map((value) => Math.min(value, 70));
    const fit = fitLobe(wide, tops);
    expect(fit).toMatchObject({
      shape: 'gaussian',
      peak: { value: expect.closeTo(100, 6) },
      axes: [{ centre: { value: expect.closeTo(0.12, 6) }, halfAngle: { value: expect.closeTo(0.5, 6) } }],
      flags: [{ kind: 'clipped', size: expect.closeTo(0.3, 6) }],
      n: tops.filter((value) => value < 70).length,
    });
  });
  it('shows above a floor as well', () => {
    const tops = lobeLevel(lobe({ floor: 30 }), [wide]).map((value) => Math.min(value, 100));
    expect(fitLobe(wide, tops, { covered: 30 }).flags).toMatchObject([
      { kind: 'clipped', size: expect.closeTo(0.3, 6) },
    ]);
  });
  it('in coarse steps is what lies within half a step of the highest', () => {
    const tops = lobeLevel(lobe(), [wide]).map((value, row) => (value > 80 ? 80 - (row % 2) * 0.4 : value));
    for (const quantum of [1, 6]) {
      const fit = fitLobe(wide, tops, { quantum });
      expect(kinds(fit)).toContain('clipped');
      expect(fit.n).toBe(tops.filter((value) => value < 80 - quantum / 2).length);
    }
  });
  it('must have lost more than two steps of the readings, and three of their spreads', () => {
    const broad = lobeLevel(lobe({ halfAngle: [0.8], centre: [0.1] }), [wide]);
    const seen = (most: number, spread: number, quantum: number) => {
      const noise = normalNoise(124);
      const level = broad.map((value) => Math.min(value + spread * noise(), most));
      return kinds(fitLobe(wide, level, { quantum })).includes('clipped');
    };
    expect([seen(89, 0, 4), seen(93.5, 0, 4)]).toEqual([true, false]);
    expect([seen(75, 2, 0), seen(96, 2, 0)]).toEqual([true, false]);
  });
  it('shows in three readings or more: two that are alike may be chance', () => {
    const coarse = degrees(-1.53, 1.47, 0.3);
    expect(cut(coarse, 0.5, 0.12, 80)).toEqual({ readings: 2, seen: false });
    expect(cut(coarse, 0.5, 0.27, 70)).toEqual({ readings: 3, seen: true });
  });
  it('is left alone where too few readings are left to tell the lobe', () => {
    const few = degrees(-0.68, 0.52, 0.2);
    const fit = fitLobe(
      few,
      lobeLevel(lobe(), [few]).map((value) => Math.min(value, 70)),
    );
    expect(kinds(fit)).not.toContain('clipped');
  });
});
