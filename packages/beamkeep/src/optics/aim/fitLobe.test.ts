import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { normalNoise } from '../../statistics/normalNoise.js';
import { aimLoss } from './aimLoss.js';
import { fitLobe, fitLobeTwoAxes, type LobeFit } from './fitLobe.js';
import { type Lobe, lobeLevel } from './lobeModel.js';

const degrees = (from: number, to: number, step: number) =>
  Float64Array.from({ length: Math.round((to - from) / step) + 1 }, (_, i) => from + i * step);

const lobe = (changes: Partial<Lobe> = {}): Lobe => ({
  peak: 100,
  floor: 0,
  centre: [0.12],
  halfAngle: [0.5],
  power: 2,
  ...changes,
});

/** A scan of a lobe, with noise of so much. */
function scan(true_: Lobe, angles: Float64Array, spread: number, noise: () => number): Float64Array {
  return lobeLevel(true_, [angles]).map((level) => level + spread * noise());
}

const kinds = (fit: LobeFit) => fit.flags.map(({ kind }) => kind);
const wide = degrees(-1.5, 1.5, 0.1);

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

describe('doubts about a scan', () => {
  const noise = normalNoise(116);
  const clean = scan(lobe(), wide, 0.5, noise);

  it('a second peak, told where it is', () => {
    const stray = lobeLevel(lobe({ peak: 25, centre: [1.2], halfAngle: [0.15] }), [wide]);
    const fit = fitLobe(
      wide,
      clean.map((value, i) => value + (stray[i] as number)),
    );
    expect(kinds(fit)).toContain('second-peak');
    const at = fit.flags.find(({ kind }) => kind === 'second-peak')?.at?.[0];
    expect(Math.abs((at ?? NaN) - 1.2)).toBeLessThanOrEqual(0.1);
    expect(Math.abs((fit.axes[0]?.centre.value ?? NaN) - 0.12)).toBeLessThan(0.03);
  });
  it('a shoulder without a peak of its own', () => {
    const stray = lobeLevel(lobe({ peak: 18, centre: [0.85], halfAngle: [0.2] }), [wide]);
    const fit = fitLobe(
      wide,
      clean.map((value, i) => value + (stray[i] as number)),
    );
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

describe('fitLobeTwoAxes', () => {
  const steps = degrees(-1.5, 1.5, 0.25);
  const pan = Float64Array.from({ length: steps.length ** 2 }, (_, i) => steps[i % steps.length] as number);
  const tilt = Float64Array.from(pan, (_, i) => steps[Math.floor(i / steps.length)] as number);
  const two = lobe({ centre: [0.2, -0.3], halfAngle: [0.6, 0.4] });

  it('a raster: both centres and both half-angles', () => {
    const noise = normalNoise(117);
    const fit = fitLobeTwoAxes(
      pan,
      tilt,
      lobeLevel(two, [pan, tilt]).map((value) => value + noise()),
    );
    const [first, second] = fit.axes;
    expect(Math.abs((first?.centre.value ?? NaN) - 0.2)).toBeLessThan(0.02);
    expect(Math.abs((second?.centre.value ?? NaN) + 0.3)).toBeLessThan(0.02);
    expect(Math.abs((first?.halfAngle.value ?? NaN) - 0.6)).toBeLessThan(0.03);
    expect(Math.abs((second?.halfAngle.value ?? NaN) - 0.4)).toBeLessThan(0.03);
    expect(kinds(fit)).toEqual([]);
    expect(aimLoss(fit, [0.8, -0.3]).value).toBeCloseTo(3.01, 0);
  });
  it('a cross: two scans, each along one axis', () => {
    const a = Float64Array.of(...wide, ...wide.map(() => 0));
    const b = Float64Array.of(...wide.map(() => 0), ...wide);
    const fit = fitLobeTwoAxes(a, b, lobeLevel(two, [a, b]));
    expect(fit.axes[0]?.centre.value).toBeCloseTo(0.2, 5);
    expect(fit.axes[1]?.centre.value).toBeCloseTo(-0.3, 5);
  });
  it('a reading with one of its angles missing is left out', () => {
    const unknown = tilt.map((angle, i) => (i % 5 === 0 ? Number.NaN : angle));
    const fit = fitLobeTwoAxes(pan, unknown, lobeLevel(two, [pan, tilt]));
    expect(fit.n).toBe(unknown.filter((angle) => !Number.isNaN(angle)).length);
    expect(fit.axes[1]?.centre.value).toBeCloseTo(-0.3, 5);
  });
  it('a stray reflection off to one side, told where it is', () => {
    const stray = lobeLevel(lobe({ peak: 30, centre: [-1.1, 1], halfAngle: [0.25, 0.25] }), [pan, tilt]);
    const fit = fitLobeTwoAxes(
      pan,
      tilt,
      lobeLevel(two, [pan, tilt]).map((value, i) => value + (stray[i] as number)),
    );
    const found = fit.flags.find(({ kind }) => kind === 'second-peak');
    expect(Math.hypot((found?.at?.[0] ?? NaN) + 1.1, (found?.at?.[1] ?? NaN) - 1)).toBeLessThan(0.25);
  });
  it('law: the axes exchanged, the lobe is the same with its axes exchanged', () => {
    const noise = normalNoise(121);
    const level = lobeLevel(two, [pan, tilt]).map((value) => value + noise());
    const [one, other] = [fitLobeTwoAxes(pan, tilt, level), fitLobeTwoAxes(tilt, pan, level)];
    expect(other.peak.value).toBeCloseTo(one.peak.value, 4);
    for (const axis of [0, 1])
      for (const of of ['centre', 'halfAngle'] as const)
        for (const limit of ['low', 'value', 'high'] as const)
          expect(other.axes[1 - axis]?.[of][limit]).toBeCloseTo(one.axes[axis]?.[of][limit] ?? Number.NaN, 4);
  });
  it('says what must change', () => {
    expect(() => fitLobeTwoAxes(pan, tilt.subarray(1), pan)).toThrow('must be as many');
    const [a, b] = [pan.subarray(0, 6), tilt.subarray(0, 6)];
    expect(() => fitLobeTwoAxes(a, b, a)).toThrow('6 readings; a lobe over 2 axis needs more than 6');
  });
  it('an axis that was not moved is not crossed', () =>
    expect(
      kinds(
        fitLobeTwoAxes(
          wide,
          wide.map(() => 0),
          lobeLevel(lobe(), [wide]),
        ),
      ),
    ).toContain('peak-not-crossed'));
});

describe('aimLoss', () => {
  it('on the peak nothing, at the half-angle 3.01 dB', () => {
    const fit = fitLobe(wide, lobeLevel(lobe(), [wide]));
    expect(aimLoss(fit, [0.12]).value).toBeCloseTo(0, 8);
    expect(aimLoss(fit, [0.62]).value).toBeCloseTo(3.0103, 4);
  });
  it('says what must change', () =>
    expect(() => aimLoss(fitLobe(wide, lobeLevel(lobe(), [wide])), [0, 0])).toThrow(
      '2 angles, but the scan has 1 axes',
    ));
});
