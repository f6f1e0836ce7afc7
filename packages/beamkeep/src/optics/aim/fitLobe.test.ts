import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { degrees, kinds, lobe, scan, wide } from '../../../../../tests/optics/scans.js';
import { normalNoise } from '../../statistics/normalNoise.js';
import { aimLoss } from './aimLoss.js';
import { fitLobe } from './fitLobe.js';
import { lobeLevel } from './lobeModel.js';

describe('fitLobe', () => {
  it('law: the lobe comes back from a scan without noise, and nothing is doubted', () => {
    const centre = fc.double({ min: -0.6, max: 0.6, noNaN: true });
    const halfAngle = fc.double({ min: 0.3, max: 0.7, noNaN: true });
    fc.assert(
      fc.property(centre, halfAngle, fc.double({ min: 0.5, max: 4000, noNaN: true }), (c, h, peak) => {
        const fit = fitLobe(wide, lobeLevel(lobe({ peak, centre: [c], halfAngle: [h] }), [wide]));
        expect(fit).toMatchObject({ shape: 'gaussian', power: { value: 2, low: 2, high: 2 } });
        expect(fit.peak.value / peak).toBeCloseTo(1, 6);
        expect(fit.axes[0]?.centre.value).toBeCloseTo(c, 6);
        expect(fit.axes[0]?.halfAngle.value).toBeCloseTo(h, 6);
        expect(kinds(fit)).toEqual([]);
      }),
      { seed: 111, numRuns: 30 },
    );
  });
  it('law: moving and stretching the scan moves and stretches the lobe', () => {
    const noise = normalNoise(112);
    const level = scan(lobe(), wide, 1, noise);
    const fit = fitLobe(wide, level);
    const moved = fitLobe(
      wide.map((angle) => 10 - 3 * angle),
      level.map((value) => 7 * value),
    );
    expect(moved.axes[0]?.centre.value).toBeCloseTo(10 - 3 * (fit.axes[0]?.centre.value ?? NaN), 4);
    expect(moved.axes[0]?.halfAngle.value).toBeCloseTo(3 * (fit.axes[0]?.halfAngle.value ?? NaN), 4);
    expect(moved.peak.value).toBeCloseTo(7 * fit.peak.value, 2);
  });
  it.each([1e-7, 1e7])('law: in units %f times as large the lobe is the same', (unit) => {
    const level = scan(lobe(), wide, 1, normalNoise(112));
    const fit = fitLobe(wide, level);
    const scaled = fitLobe(
      wide.map((angle) => unit * angle),
      level.map((value) => value / unit),
    );
    expect((scaled.axes[0]?.centre.value ?? Number.NaN) / unit).toBeCloseTo(fit.axes[0]?.centre.value ?? Number.NaN, 4);
    expect((scaled.axes[0]?.halfAngle.high ?? Number.NaN) / unit).toBeCloseTo(
      fit.axes[0]?.halfAngle.high ?? Number.NaN,
      4,
    );
    expect(scaled.peak.high * unit).toBeCloseTo(fit.peak.high, 2);
  });
  it('limits of 95 % hold the truth about 95 times in 100; a clean scan is hardly ever doubted or found super-Gaussian', () => {
    const noise = normalNoise(113);
    const held = { centre: 0, halfAngle: 0, peak: 0, loss: 0 };
    let [doubted, superGaussian] = [0, 0];
    const holds = (of: { low: number; high: number } | undefined, truth: number) =>
      of && of.low <= truth && truth <= of.high ? 1 : 0;
    for (let trial = 0; trial < 50; trial++) {
      const fit = fitLobe(wide, scan(lobe(), wide, 1.5, noise));
      held.centre += holds(fit.axes[0]?.centre, 0.12);
      held.halfAngle += holds(fit.axes[0]?.halfAngle, 0.5);
      held.peak += holds(fit.peak, 100);
      held.loss += holds(aimLoss(fit, [0.42]), 10 * Math.log10(2) * 0.36);
      doubted += fit.flags.length > 0 ? 1 : 0;
      superGaussian += fit.shape === 'super-gaussian' ? 1 : 0;
    }
    for (const count of Object.values(held)) expect(count).toBeGreaterThanOrEqual(42); // 47.5 expected, 1.5 its deviation
    expect(doubted).toBeLessThanOrEqual(3);
    expect(superGaussian).toBeLessThanOrEqual(4);
  });
  it('a flat top with steep sides is told from a Gaussian', () => {
    const fit = fitLobe(wide, scan(lobe({ power: 4 }), wide, 1, normalNoise(114)));
    expect(fit.shape).toBe('super-gaussian');
    expect(fit.power.low).toBeLessThan(4);
    expect(fit.power.high).toBeGreaterThan(4);
    expect(fit.informationGain).toBeGreaterThan(6);
  });
  it.each([1.2, 1.5, 3, 4, 6, 9])('law: the power %f comes back from a scan without noise', (power) => {
    const fit = fitLobe(wide, lobeLevel(lobe({ power }), [wide]));
    expect(fit.shape).toBe('super-gaussian');
    expect(fit.power.value).toBeCloseTo(power, 4);
    expect(fit.lobe.power).toBe(fit.power.value);
    expect(fit.axes[0]?.halfAngle.value).toBeCloseTo(0.5, 5);
  });
  it.each([31, 14])(
    'what the shape would gain goes by Hurvich and Tsai: over %i readings without noise, only the cost of a number more',
    (n) => {
      const turns = degrees(-1.3, 1.6, 2.9 / (n - 1));
      const corrected = (k: number) => 2 * k + (2 * k * (k + 1)) / (n - k - 1); // the spread is a number, too
      const { informationGain, shape } = fitLobe(turns, lobeLevel(lobe(), [turns]));
      expect(informationGain).toBeCloseTo(corrected(5) - corrected(6), 2);
      expect(shape).toBe('gaussian');
    },
  );
  it('a shape whose fit did not come to rest gains nothing', () => {
    const rising = fitLobe(
      wide,
      wide.map((angle) => 5 + angle),
    );
    expect(rising).toMatchObject({ shape: 'gaussian', informationGain: Number.NEGATIVE_INFINITY });
    expect(kinds(rising)).toContain('peak-not-crossed');
  });
  it('readings in coarse steps scatter by the step over the root of 12 at least (JCGM 100:2008, F.2.2.1)', () => {
    const spread = (quantum: number) => fitLobe(wide, lobeLevel(lobe(), [wide]), { quantum }).residualSpread;
    expect(spread(4)).toBeCloseTo(4 / Math.sqrt(12), 6);
    expect(spread(0)).toBeLessThan(1e-6);
  });
  it('wild readings have no say', () => {
    const level = scan(lobe(), wide, 1, normalNoise(115)).map((value, i) => (i % 8 === 3 ? value + 60 : value));
    const centre = fitLobe(wide, level).axes[0]?.centre.value;
    expect(Math.abs((centre ?? NaN) - 0.12)).toBeLessThan(0.03);
  });
  it('missing readings are left out', () => {
    const level = lobeLevel(lobe(), [wide]).map((value, i) => (i % 4 === 0 ? Number.NaN : value));
    expect(fitLobe(wide, level)).toMatchObject({ n: 23 });
    const unknown = wide.map((angle, i) => (i % 4 === 0 ? Number.NaN : angle));
    const fit = fitLobe(unknown, lobeLevel(lobe(), [wide]));
    expect(fit).toMatchObject({ n: 23, axes: [{ centre: { value: expect.closeTo(0.12, 6) } }] });
  });
  it('says what must change', () => {
    expect(() => fitLobe(wide, new Float64Array(3))).toThrow('angles and levels (3) must be as many');
    expect(() => fitLobe(wide.subarray(0, 4), new Float64Array(4))).toThrow(
      '4 readings; a lobe over 1 axis needs more than 4',
    );
  });
});

describe('limits and shapes of few readings', () => {
  const some = (count: number) => Float64Array.from({ length: count }, (_, k) => -0.8 + (1.8 * k) / (count - 1));
  it('limits are those of Student with what is left of the readings', () => {
    const eight = some(8);
    const fit = fitLobe(eight, scan(lobe(), eight, 1, normalNoise(118)));
    const reach = ({ low, high }: { low: number; high: number }) => (high - low) / 2;
    const error = (k: number) => Math.sqrt(fit.covariance[k]?.[k] as number);
    expect(reach(fit.peak) / error(0)).toBeCloseTo(2.776, 3); // 8 readings, 4 numbers
    expect(reach(fit.axes[0]?.centre as { low: number; high: number }) / error(2)).toBeCloseTo(2.776, 3);
    const wider = fitLobe(eight, scan(lobe(), eight, 1, normalNoise(118)), { confidence: 0.99 });
    expect(reach(wider.peak) / error(0)).toBeCloseTo(4.604, 3);
  });
  it('seven readings or fewer can ask for no other shape than a Gaussian: five numbers and the spread take six', () => {
    const flat = (count: number) => fitLobe(some(count), lobeLevel(lobe({ power: 5 }), [some(count)]));
    for (const count of [5, 6, 7])
      expect(flat(count)).toMatchObject({ shape: 'gaussian', informationGain: Number.NEGATIVE_INFINITY });
    expect(flat(8).informationGain).toBeGreaterThan(Number.NEGATIVE_INFINITY);
    expect(flat(24).shape).toBe('super-gaussian');
  });
  it('the covariance is that of the main lobe alone', () => {
    const stray = lobeLevel(lobe({ peak: 30, centre: [1.2], halfAngle: [0.15] }), [wide]);
    const fit = fitLobe(
      wide,
      lobeLevel(lobe(), [wide]).map((value, i) => value + (stray[i] as number)),
    );
    expect(fit.stray).toBeDefined();
    expect(fit.covariance.map((row) => row.length)).toEqual([4, 4, 4, 4]);
  });
});
