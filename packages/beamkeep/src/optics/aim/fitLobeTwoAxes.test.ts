import { describe, expect, it } from 'vitest';
import { degrees, kinds, lobe, wide } from '../../../../../tests/optics/scans.js';
import { normalNoise } from '../../statistics/normalNoise.js';
import { aimLoss } from './aimLoss.js';
import { fitLobeTwoAxes } from './fitLobe.js';
import { lobeLevel } from './lobeModel.js';

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
