import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalNoise } from '../../statistics/normalNoise.js';
import { fitLobe, fitLobeTwoAxes, type LobeFit } from './fitLobe.js';
import { type Lobe, lobeLevel } from './lobeModel.js';

/* A main lobe of 100, half-angle 0.5 about 0.12, and what is put beside it, without noise where nothing is said. */

const angles = Float64Array.from({ length: 41 }, (_, k) => -2 + 0.1 * k);
const main: Lobe = { peak: 100, floor: 0, centre: [0.12], halfAngle: [0.5], power: 2 };
const noiseless = (): number => 0;
function fitWith(beside: Partial<Lobe>, spread = 0, noise = noiseless): LobeFit {
  const stray = lobeLevel({ ...main, ...beside }, [angles]);
  return fitLobe(
    angles,
    lobeLevel(main, [angles]).map((value, row) => value + (stray[row] as number) + spread * noise()),
  );
}

describe('a weaker lobe beside the main one', () => {
  it('is found as it is, and the main lobe with it', () => {
    const { stray, lobe, peak, axes, flags } = fitWith({ peak: 30, centre: [1.3], halfAngle: [0.2] });
    expect(stray).toMatchObject({ share: expect.closeTo(0.3, 3), at: [expect.closeTo(1.3, 3)], ownPeak: true });
    expect(lobe.centre[0]).toBeCloseTo(0.12, 4);
    expect(axes[0]?.halfAngle.value).toBeCloseTo(0.5, 4);
    expect(peak.value).toBeCloseTo(100, 2);
    expect(flags.map(({ kind }) => kind)).toEqual(['second-peak']);
  });
  it('to the other side as well', () =>
    expect(fitWith({ peak: 30, centre: [-1], halfAngle: [0.2] }).stray).toMatchObject({
      at: [expect.closeTo(-1, 3)],
      ownPeak: true,
    }));
  it('one that only lifts the flank has no peak of its own', () => {
    const { stray, flags } = fitWith({ peak: 15, centre: [0.75], halfAngle: [0.35] });
    expect(stray).toMatchObject({ share: expect.closeTo(0.15, 3), at: [expect.closeTo(0.75, 2)], ownPeak: false });
    expect(flags.map(({ kind }) => kind)).toEqual(['shoulder']);
  });
  it('of two the weaker is the stray one', () => {
    const { stray, lobe } = fitWith({ peak: 80, centre: [1.5] });
    expect(lobe.centre[0]).toBeCloseTo(0.12, 3);
    expect(stray?.share).toBeCloseTo(0.8, 3);
    const stronger = fitWith({ peak: 125, centre: [1.5] });
    expect(stronger.lobe.centre[0]).toBeCloseTo(1.5, 3);
    expect(stronger.stray).toMatchObject({ share: expect.closeTo(0.8, 3), at: [expect.closeTo(0.12, 3)] });
  });
  it('less than 2 % of the peak does not matter', () => {
    expect(fitWith({ peak: 2.5, centre: [1.3], halfAngle: [0.2] }).stray?.share).toBeCloseTo(0.025, 3);
    expect(fitWith({ peak: 1.5, centre: [1.3], halfAngle: [0.2] }).stray).toBeUndefined();
  });
  it('law: up to three times as wide as the main lobe it is told from it, and bends nothing', () => {
    const of = (from: number, to: number) => fc.double({ min: from, max: to, noNaN: true });
    fc.assert(
      fc.property(of(1.5, 2.9), of(0.1, 0.5), of(1.6, 2.2), (ratio, share, off) => {
        const centre = 0.12 + 0.5 * off;
        const fit = fitWith({ peak: 100 * share, halfAngle: [0.5 * ratio], centre: [centre] });
        const { stray, axes, flags } = fit;
        expect(fit).toMatchObject({ shape: 'gaussian', power: { value: 2 }, lobe: { power: 2 } });
        expect(stray).toMatchObject({ share: expect.closeTo(share, 3), at: [expect.closeTo(centre, 3)] });
        expect(axes[0]?.centre.value).toBeCloseTo(0.12, 4);
        expect(flags.map(({ kind }) => kind)).toContain('shoulder');
      }),
      { seed: 122, numRuns: 15 },
    );
  });
  it.each([4, 6, 9])('%i times as wide, or without end, it is a raised floor', (ratio) => {
    const { stray, flags } = fitWith({ peak: 20, halfAngle: [0.5 * ratio], centre: [0.87] });
    expect(stray).toBeUndefined();
    expect(flags.map(({ kind }) => kind)).toContain('raised-floor');
  });
  it('nearer than can be told in noise, the centre lies between the two', () => {
    const noise = normalNoise(123);
    for (let scan = 0; scan < 4; scan++) {
      const { axes } = fitWith({ peak: 30, centre: [0.5], halfAngle: [0.5] }, 3, noise);
      expect(axes[0]?.centre.value).toBeGreaterThan(0.12);
      expect(axes[0]?.centre.value).toBeLessThan(0.5);
    }
  });
  it('beside it, readings in coarse steps scatter by the step over the root of 12 at least', () => {
    const stray = lobeLevel({ ...main, peak: 30, centre: [1.3], halfAngle: [0.2] }, [angles]);
    const level = lobeLevel(main, [angles]).map((value, row) => value + (stray[row] as number));
    const fit = fitLobe(angles, level, { quantum: 1 });
    expect(fit.stray).toBeDefined();
    expect(fit.residualSpread).toBeCloseTo(1 / Math.sqrt(12), 6);
  });
  it('two lobes about one middle are the shape of one lobe', () =>
    expect(fitWith({ peak: 30, centre: [0.12], halfAngle: [0.25] }).stray).toBeUndefined());
  it('a spike of one reading is none', () =>
    expect(fitWith({ peak: 30, centre: [1.3], halfAngle: [0.04] }).stray).toBeUndefined());
  it('flat tops and sharp ones are shapes of one lobe', () => {
    for (const power of [1.5, 4]) {
      const { stray, shape } = fitLobe(angles, lobeLevel({ ...main, power }, [angles]));
      expect({ stray, shape }).toEqual({ stray: undefined, shape: 'super-gaussian' });
    }
  });
  it('law: what is called the weaker is weaker, and never less than 2 % of the peak', () => {
    const of = (from: number, to: number) => fc.double({ min: from, max: to, noNaN: true });
    fc.assert(
      fc.property(of(0.01, 1.6), of(0.08, 0.8), of(0.9, 1.7), (share, halfAngle, at) => {
        const { stray } = fitWith({ peak: 100 * share, halfAngle: [halfAngle], centre: [at] });
        if (stray) expect(stray.share).toBeLessThan(1);
        if (stray) expect(stray.share).toBeGreaterThan(0.02);
      }),
      { seed: 119, numRuns: 25, examples: [[1.3, 0.15, 1.3]] },
    );
  });
  it('law: the scan turned round, or read in another order, tells the same of it', () => {
    const noise = normalNoise(120);
    const stray = lobeLevel({ ...main, peak: 25, centre: [1.2], halfAngle: [0.2] }, [angles]);
    const level = lobeLevel(main, [angles]).map((value, row) => value + (stray[row] as number) + noise());
    const told = fitLobe(angles, level).stray;
    const turned = fitLobe(
      angles.map((angle) => -angle),
      level,
    ).stray;
    const order = Array.from(angles.keys(), (row) => (row * 17) % angles.length);
    const shuffled = fitLobe(
      Float64Array.from(order, (row) => angles[row] as number),
      Float64Array.from(order, (row) => level[row] as number),
    ).stray;
    const like = { share: expect.closeTo(told?.share ?? Number.NaN, 4), ownPeak: true };
    const at = told?.at[0] ?? Number.NaN;
    expect(at).toBeCloseTo(1.2, 1);
    expect(turned).toMatchObject({ ...like, at: [expect.closeTo(-at, 4)] });
    expect(shuffled).toMatchObject({ ...like, at: [expect.closeTo(at, 4)] });
  });
  it('law: more light of both leaves its share as it is', () => {
    const stray = lobeLevel({ ...main, peak: 25, centre: [1.2], halfAngle: [0.2] }, [angles]);
    const level = lobeLevel(main, [angles]).map((value, row) => value + (stray[row] as number));
    for (const times of [0.001, 40])
      expect(
        fitLobe(
          angles,
          level.map((value) => times * value),
        ).stray,
      ).toMatchObject({ share: expect.closeTo(0.25, 4), at: [expect.closeTo(1.2, 4)], ownPeak: true });
  });
  it.each([1.75, -1.6])('a wild reading on the peak does not hide one at %f', (at) => {
    const stray = lobeLevel({ ...main, peak: 20, centre: [at], halfAngle: [0.13] }, [angles]);
    const level = lobeLevel(main, [angles]).map((value, row) => value + (stray[row] as number));
    level[21] = (level[21] as number) + 60; // at 0.1, where the peak is
    expect(fitLobe(angles, level).stray).toMatchObject({ share: expect.closeTo(0.2, 3), at: [expect.closeTo(at, 3)] });
  });
  it.each([
    [0.95, -1.5],
    [-0.7, 1.7],
  ])('nor does one far off to the other side: at %f, wild at %f', (at, wild) => {
    const stray = lobeLevel({ ...main, peak: 25, centre: [at], halfAngle: [0.2] }, [angles]);
    const level = lobeLevel(main, [angles]).map((value, row) => value + (stray[row] as number));
    const row = angles.findIndex((angle) => Math.abs(angle - wild) < 0.01);
    level[row] = (level[row] as number) + 60;
    expect(fitLobe(angles, level).stray).toMatchObject({ share: expect.closeTo(0.25, 3), at: [expect.closeTo(at, 3)] });
  });
  it('in noise it is believed from four of its errors on', () => {
    const believed = (share: number) =>
      Array.from({ length: 5 }, (_, seed) =>
        fitWith({ peak: share, centre: [1.3], halfAngle: [0.2] }, 2, normalNoise(seed + 1)),
      ).filter(({ stray }) => stray !== undefined && Math.abs((stray.at[0] ?? Number.NaN) - 1.3) < 0.15).length;
    expect(believed(20)).toBe(5);
    expect(believed(3)).toBeLessThanOrEqual(1); // an error is about 1 % of the peak
  });
  it('needs more readings than its seven numbers and the spread take: ten over one axis', () => {
    const of = (count: number) => {
      const few = Float64Array.from({ length: count }, (_, k) => -0.8 + (2.8 * k) / (count - 1));
      const stray = lobeLevel({ ...main, peak: 60, centre: [1.4], halfAngle: [0.3] }, [few]);
      return fitLobe(
        few,
        lobeLevel(main, [few]).map((value, row) => value + (stray[row] as number)),
      ).stray;
    };
    for (const count of [8, 9]) expect(of(count)).toBeUndefined();
    expect(of(12)).toMatchObject({ share: expect.closeTo(0.6, 2), at: [expect.closeTo(1.4, 2)] });
    expect(of(15)).toMatchObject({ at: [expect.closeTo(1.4, 2)] });
  });
  it('is found beside a lobe whose top is cut off', () => {
    const stray = lobeLevel({ ...main, peak: 30, centre: [1.3], halfAngle: [0.2] }, [angles]);
    const cut = lobeLevel(main, [angles]).map((value, row) => Math.min(value + (stray[row] as number), 80));
    const fit = fitLobe(angles, cut);
    expect(fit.flags.map(({ kind }) => kind)).toEqual(['clipped', 'second-peak']);
    expect(fit.peak.value).toBeCloseTo(100, 1);
    expect(fit.stray).toMatchObject({ share: expect.closeTo(0.3, 2), at: [expect.closeTo(1.3, 2)] });
  });
});

describe('over two axes', () => {
  const places = Array.from({ length: 13 }, (_, k) => -1.8 + 0.3 * k);
  const pan = Float64Array.from(places.flatMap((x) => places.map(() => x)));
  const tilt = Float64Array.from(places.flatMap(() => places));
  const two: Lobe = { ...main, centre: [0.2, -0.3], halfAngle: [0.6, 0.4] };
  it.each([
    [-1.1, 1],
    [1.5, -0.3],
    [0.2, 0.9],
  ])('is found at %f, %f, as wide against the main lobe on either axis', (x, y) => {
    const stray: Lobe = { ...two, peak: 30, centre: [x, y], halfAngle: [0.36, 0.24] };
    const level = lobeLevel(two, [pan, tilt]);
    const beside = lobeLevel(stray, [pan, tilt]);
    const fit = fitLobeTwoAxes(
      pan,
      tilt,
      level.map((value, row) => value + (beside[row] as number)),
    );
    expect(fit.stray).toMatchObject({
      share: expect.closeTo(0.3, 3),
      at: [expect.closeTo(x, 3), expect.closeTo(y, 3)],
      ownPeak: true,
    });
    expect(fit.lobe.halfAngle).toEqual([expect.closeTo(0.6, 3), expect.closeTo(0.4, 3)]);
  });
});
