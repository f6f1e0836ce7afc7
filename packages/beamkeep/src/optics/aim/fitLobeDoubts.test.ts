import { describe, expect, it } from 'vitest';
import { degrees, kinds, lobe, scan, wide } from '../../../../../tests/optics/scans.js';
import { normalNoise } from '../../statistics/normalNoise.js';
import { fitLobe } from './fitLobe.js';
import { lobeLevel } from './lobeModel.js';

describe('doubts about a scan', () => {
  const noise = normalNoise(116);
  const clean = scan(lobe(), wide, 0.5, noise);
  /** The fit of the scan with the light of a stray lobe [%] added to it. */
  const fitWithStray = (peak: number, centre: number, halfAngle: number) => {
    const stray = lobeLevel(lobe({ peak, centre: [centre], halfAngle: [halfAngle] }), [wide]);
    return fitLobe(
      wide,
      clean.map((value, i) => value + (stray[i] as number)),
    );
  };

  it('a second peak, told where it is', () => {
    const fit = fitWithStray(25, 1.2, 0.15);
    expect(kinds(fit)).toContain('second-peak');
    const at = fit.flags.find(({ kind }) => kind === 'second-peak')?.at?.[0];
    expect(Math.abs((at ?? NaN) - 1.2)).toBeLessThanOrEqual(0.1);
    expect(Math.abs((fit.axes[0]?.centre.value ?? NaN) - 0.12)).toBeLessThan(0.03);
  });
  it('a shoulder without a peak of its own', () => {
    const fit = fitWithStray(18, 0.85, 0.2);
    expect(kinds(fit)).toContain('shoulder');
    expect(kinds(fit)).not.toContain('second-peak');
  });
  it('a raised floor, but not one that is the covered reading', () => {
    const raised = clean.map((value) => value + 12);
    expect(kinds(fitLobe(wide, raised))).toEqual(['raised-floor']);
    expect(kinds(fitLobe(wide, raised, { covered: 12 }))).toEqual([]);
  });
  it('a top that is cut off: the peak is told from the sides', () => {
    const fit = fitLobe(
      wide,
      clean.map((value) => Math.min(value, 80)),
    );
    expect(kinds(fit)).toContain('clipped');
    expect(fit.peak.value).toBeGreaterThan(92);
    expect(fit.n).toBe(wide.length - 1 - clean.filter((value) => value > 80).length + 1);
  });
  it('a coarse reading that stands level on the top is not cut off', () => {
    const coarse = lobeLevel(lobe(), [wide]).map((value) => Math.round(value / 4) * 4);
    expect(kinds(fitLobe(wide, coarse, { quantum: 4 }))).toEqual([]);
  });
  it('too few readings', () => {
    const few = degrees(-0.6, 0.9, 0.3);
    expect(kinds(fitLobe(few, lobeLevel(lobe(), [few])))).toContain('few-points');
  });
  it('a scan that never crossed the peak', () => {
    const side = degrees(0.2, 1.6, 0.1);
    expect(kinds(fitLobe(side, scan(lobe(), side, 0.5, noise)))).toContain('peak-not-crossed');
    const rising = degrees(-2, -0.2, 0.1);
    expect(kinds(fitLobe(rising, scan(lobe(), rising, 0.5, noise)))).toContain('peak-not-crossed');
  });
  it.each([
    ['no light', () => () => 0],
    ['the same light everywhere', () => () => 5],
    ['noise alone', () => normalNoise(5)],
    ['other noise alone', () => normalNoise(6)],
  ])('a scan that shows %s is doubted, and nothing is seen beside its lobe', (_, readings) => {
    const turns = degrees(-2, 2, 0.1);
    const reading = readings();
    const fit = fitLobe(
      turns,
      turns.map(() => reading()),
    );
    expect(kinds(fit)).toContain('noisy');
    expect(fit.stray).toBeUndefined();
  });
  it.each([0.12, 0])('a dip about %f is no lobe: what is found stands above the floor, and is doubted', (centre) => {
    const fit = fitLobe(
      wide,
      lobeLevel(lobe({ centre: [centre] }), [wide]).map((value) => 100 - value),
    );
    expect(fit.peak.value).toBeGreaterThan(0);
    expect(kinds(fit)).toContain('noisy');
  });
  it.each([
    ['dips alone', [0, 1, 1, 0, 1, 1, 1]],
    ['a lobe without end', [2, 2, 0, 2, 2, 1, 2]],
  ])('seven readings that show %s are doubted', (_, levels) =>
    expect(kinds(fitLobe(Float64Array.from(levels.keys()), Float64Array.from(levels)))).toEqual(
      expect.arrayContaining(['few-points', 'noisy']),
    ),
  );
  it.each([
    [
      [0, 0.1, 2, 0.3, 0.4, 0.5],
      [1, 1, 1, 0, 1, 1],
    ],
    [
      [0, 0.1, 0.2, 0.3, 0.4, 5],
      [0, 0, 0, 0, 1, 0],
    ],
    [
      [0, 1, 2, 0.3, 0.4, 0.5, 6, 7, 8, 9, 1, 1.1],
      [0, 0, 0, 1, 0, 0, 1, 0, 0, 1, 0, 0],
    ],
  ])('light here and there at two levels, at %j, is doubted, though its lobe has no width or no end', (at, levels) => {
    const fit = fitLobe(Float64Array.from(at), Float64Array.from(levels));
    expect(kinds(fit)).toContain('noisy');
    expect(fit.stray).toBeUndefined();
  });
  it('readings that scatter', () => expect(kinds(fitLobe(wide, scan(lobe(), wide, 16, noise)))).toContain('noisy'));
});
