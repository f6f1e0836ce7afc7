import { describe, expect, it } from 'vitest';
import { fitLobe, fitLobeTwoAxes, type LobeFit } from '../../optics/index.js';
import { aimMargin } from './aimMargin.js';

/* Exact lobes, so that the fit is the lobe itself. Loss in dB is 3.0103 r^power, r half-angles off the peak. */

const half = 10 * Math.log10(2);
const level = (r: number, power: number) => 100 * 2 ** -(r ** power);
const separation = { separation: 50 };

function oneAxis(power: number): LobeFit {
  const angles = Float64Array.from({ length: 81 }, (_, k) => -2 + 0.05 * k);
  return fitLobe(
    angles,
    angles.map((angle) => level(Math.abs(angle - 0.1) / 0.7, power)),
  );
}
function twoAxes(): LobeFit {
  const places = Array.from({ length: 21 }, (_, i) => -1.5 + 0.15 * i);
  const pan = Float64Array.from(places.flatMap((x) => places.map(() => x)));
  const tilt = Float64Array.from(places.flatMap(() => places));
  return fitLobeTwoAxes(
    pan,
    tilt,
    pan.map((x, row) => level(Math.hypot(x / 0.8, (tilt[row] as number) / 0.4), 2)),
  );
}
const turn = (fit: LobeFit, at: readonly number[] | undefined, threshold = 50, residue = 0) =>
  aimMargin(fit, at, threshold, residue, separation).degrees.value;

describe('aimMargin over one axis', () => {
  const gaussian = oneAxis(2);
  it('derived: on the peak half of the light is gone at the half-angle', () => {
    expect(turn(gaussian, undefined)).toBeCloseTo(0.7, 4);
    expect(turn(gaussian, [0.1])).toBeCloseTo(0.7, 4);
    expect(turn(oneAxis(4), [0.1])).toBeCloseTo(0.7, 2);
  });
  it('derived: a half-angle off the peak, 3 dB more are root 2 half-angles off it', () => {
    expect(turn(gaussian, [0.8])).toBeCloseTo(0.7 * (Math.SQRT2 - 1), 4);
    expect(turn(gaussian, [-0.6])).toBeCloseTo(0.7 * (Math.SQRT2 - 1), 4); // to the other side as well
  });
  it('re-aiming would make of it what a head on the peak has', () =>
    expect(aimMargin(gaussian, [0.8], 50, 0, separation).degreesOnPeak).toBeCloseTo(0.7, 4));
  it('derived: where a third stays without the beam, 50 % is read at 75 % of true loss', () => {
    const loss = -10 * Math.log10(0.25);
    expect(turn(gaussian, undefined, 50, 1 / 3)).toBeCloseTo(0.7 * Math.sqrt(loss / half), 4);
    expect(turn(gaussian, undefined, 50, 0.51)).toBe(Number.POSITIVE_INFINITY);
  });
  it('a turn that never alarms is as far off at the far end', () =>
    expect(aimMargin(gaussian, undefined, 50, 0.51, separation).millimetres).toEqual({
      value: Number.POSITIVE_INFINITY,
      low: Number.POSITIVE_INFINITY,
      high: Number.POSITIVE_INFINITY,
    }));
  it('derived: 0.7 degrees are 611 mm, 50 m away', () => {
    const { millimetres, degrees, threshold } = aimMargin(gaussian, undefined, 50, 0, separation);
    expect(millimetres.value).toBeCloseTo(610.9, 0);
    expect(millimetres.low).toBeCloseTo(50_000 * Math.tan((degrees.low * Math.PI) / 180), 6);
    expect(millimetres.high).toBeCloseTo(50_000 * Math.tan((degrees.high * Math.PI) / 180), 6);
    expect(threshold).toBe(50);
  });
});

describe('aimMargin over two axes', () => {
  const fit = twoAxes();
  /** The slow way: out from a place in every direction, by small steps, until the level has fallen by half. */
  const stepped = ([x0, y0]: readonly [number, number]): number => {
    const at = (x: number, y: number) => level(Math.hypot(x / 0.8, y / 0.4), 2);
    const wanted = at(x0, y0) / 2;
    let least = Number.POSITIVE_INFINITY;
    for (let angle = 0; angle < 360; angle++) {
      const [dx, dy] = [Math.cos((angle * Math.PI) / 180), Math.sin((angle * Math.PI) / 180)];
      let way = 0;
      while (way < 3 && at(x0 + way * dx, y0 + way * dy) > wanted) way += 1e-4;
      least = Math.min(least, way);
    }
    return least;
  };
  it('on the peak it is the half-angle of the narrower axis', () => expect(turn(fit, undefined)).toBeCloseTo(0.4, 3));
  it.each([
    [0.4, 0],
    [0, 0.2],
    [0, -0.2],
    [-0.5, 0.15],
  ] as const)('left at %f, %f: the shortest way out, as small steps find it', (x, y) =>
    expect(turn(fit, [x, y])).toBeCloseTo(stepped([x, y]), 3),
  );
});
