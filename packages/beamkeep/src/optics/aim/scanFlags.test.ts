import { describe, expect, it } from 'vitest';
import type { RobustNonlinearFit } from '../../statistics/index.js';
import { type Lobe, lobeLevel } from './lobeModel.js';
import { type ScanEvidence, scanFlags } from './scanFlags.js';

/* A lobe of half-angle 2 about 1, so that turns are not angles: a peak of 100 over a scan from 8 below to 8 above it. */

const lobe: Lobe = { peak: 100, floor: 0, centre: [1], halfAngle: [2], power: 2 };
const column = Float64Array.from({ length: 33 }, (_, k) => -7 + 0.5 * k);
/** Row of a turn off the peak [half-angles], in steps of a quarter. */
const rowAt = (turn: number) => 16 + 4 * turn;

interface Case extends Partial<Omit<ScanEvidence, 'fit'>> {
  /** What stands above the lobe, by turn off the peak. */
  readonly above?: Readonly<Record<string, number>>;
  readonly spread?: number;
  readonly n?: number;
  readonly parameters?: number;
}
function flags({ above = {}, spread = 0.5, n = 33, parameters = 4, ...more }: Case = {}) {
  const angles = more.angles ?? [column];
  const plain = more.level ?? lobeLevel(more.lobe ?? lobe, angles);
  const residuals = new Float64Array(plain.length);
  for (const [turn, excess] of Object.entries(above)) residuals[rowAt(Number(turn))] = excess;
  const fit = {
    n,
    parameters: new Float64Array(parameters),
    residuals,
    residualSpread: spread,
  } as unknown as RobustNonlinearFit;
  return scanFlags({
    lobe,
    cut: undefined,
    covered: 0,
    centreError: [0.01],
    floorError: 0.1,
    stray: undefined,
    ...more,
    fit,
    angles,
    level: plain.map((value, row) => value + (residuals[row] as number)),
  });
}
const kinds = (given: Case) => flags(given).map(({ kind }) => kind);

describe('scanFlags: the scan as a whole', () => {
  it('a clean scan has none', () => expect(flags()).toEqual([]));
  it('a lobe needs four readings beyond its numbers', () => {
    expect(flags({ n: 8 })).toEqual([]);
    expect(flags({ n: 7 })).toEqual([{ kind: 'few-points', size: 7 }]);
    expect(kinds({ n: 8, parameters: 5 })).toEqual(['few-points']);
  });
  it('and one for each number within one and a half half-angles of the peak', () => {
    const within = (...turns: readonly number[]) =>
      kinds({ angles: [Float64Array.from(turns, (turn) => 1 + 2 * turn)] });
    expect(within(-4, -3, -1.4, -0.6, 0.6, 1.4, 3, 4)).toEqual([]);
    expect(within(-4, -3, -1.4, -0.6, 0.6, 1.5, 3, 4)).toEqual(['few-points']);
  });
  it('half a half-angle must have been scanned on both sides of the peak, on every axis', () => {
    const from = (least: number, most: number) => {
      const turns = column.map((angle) => (angle - 1) / 2).filter((turn) => turn >= least && turn <= most);
      return flags({ angles: [turns.map((turn) => 1 + 2 * turn)] });
    };
    expect(from(-0.5, 4)).toEqual([]);
    expect(from(-0.25, 4)).toEqual([{ kind: 'peak-not-crossed', at: [1], size: 1 }]);
    expect(from(-4, 0.5)).toEqual([]);
    expect(from(-4, 0.25)).toEqual([{ kind: 'peak-not-crossed', at: [1], size: 1 }]);
    const two = { ...lobe, centre: [1, 0], halfAngle: [2, 1] };
    expect(kinds({ lobe: two, angles: [column, column.map(() => 0)], centreError: [0, 0] })).toEqual([
      'peak-not-crossed',
    ]);
  });
  it('a top that is cut off: how far the true peak stands above it', () => {
    const [flag] = flags({ cut: 94, lobe: { ...lobe, floor: 10 } });
    expect(flag).toMatchObject({ kind: 'clipped', at: [1], size: expect.closeTo(0.16, 9) }); // 16 of 100 are lost
  });
  it('a floor that is 3 % of the peak above the covered reading, and sure of it', () => {
    const floor = (value: number, covered = 0, floorError = 0.1) =>
      flags({ lobe: { ...lobe, floor: value }, covered, floorError });
    expect(floor(2.9)).toEqual([]);
    expect(floor(5)).toEqual([{ kind: 'raised-floor', size: 0.05 }]);
    expect(floor(5, 3)).toEqual([]);
    expect(floor(9, 4)).toEqual([{ kind: 'raised-floor', size: 0.05 }]);
    expect(floor(5, 0, 1.7)).toEqual([]); // three errors are 5.1
    expect(floor(5, 0, 1.6)).toHaveLength(1);
  });
  it('readings that scatter by more than a tenth of the peak, or a centre known no better than a tenth', () => {
    expect(flags({ spread: 10 })).toEqual([]);
    expect(flags({ spread: 10.1 })).toEqual([{ kind: 'noisy', size: expect.closeTo(0.101, 9) }]);
    expect(flags({ centreError: [0.1] })).toEqual([]);
    expect(kinds({ centreError: [0.11] })).toEqual(['noisy']);
    expect(kinds({ centreError: [0.01, 0.11] })).toEqual(['noisy']);
    expect(kinds({ centreError: [Number.NaN] })).toEqual(['noisy']);
  });
  it('the gravest come first', () =>
    expect(
      kinds({
        n: 3,
        cut: 95,
        lobe: { ...lobe, floor: 10 },
        spread: 11,
        stray: { share: 0.2, at: [3], ownPeak: true },
      }),
    ).toEqual(['few-points', 'clipped', 'second-peak', 'raised-floor', 'noisy']));
});

describe('scanFlags: light that stands above the lobe', () => {
  it('a lobe that was fitted beside the main one is told as it was found', () => {
    const stray = (ownPeak: boolean) => flags({ stray: { share: 0.2, at: [3], ownPeak } });
    expect(stray(true)).toEqual([{ kind: 'second-peak', at: [3], size: 0.2 }]);
    expect(stray(false)).toEqual([{ kind: 'shoulder', at: [3], size: 0.2 }]);
  });
  it('two readings together that stand above by three and a half spreads, told where the higher is', () => {
    expect(flags({ above: { 2: 3, 2.25: 3.2 } })).toEqual([{ kind: 'shoulder', at: [5.5], size: 0.032 }]);
    expect(flags({ above: { 2: 3, 2.25: 3.2 }, spread: 0.9 })).toEqual([]);
    expect(flags({ above: { 2: 3, 2.5: 3.2 } })).toHaveLength(1); // half a half-angle apart
    expect(flags({ above: { 2: 3, 2.75: 3.2 } })).toEqual([]); // each alone
  });
  it('one reading alone must stand above by eight spreads', () => {
    expect(flags({ above: { 2: 3.9 } })).toEqual([]);
    expect(flags({ above: { 2: 4.1 } })).toHaveLength(1);
  });
  it('2 % of the peak at least, however quiet the readings', () => {
    expect(flags({ above: { 2: 1.9 }, spread: 0.01 })).toEqual([]);
    expect(flags({ above: { 2: 2.1 }, spread: 0.01 })).toHaveLength(1);
  });
  it('nearer than 0.7 half-angles to the peak it is the shape of the lobe', () => {
    expect(flags({ above: { 0.5: 20 } })).toEqual([]);
    expect(flags({ above: { 0.75: 20 } })).toHaveLength(1);
    expect(flags({ above: { [-0.75]: 20 } })).toHaveLength(1);
  });
  it('a row below the lobe is none of it', () => expect(flags({ above: { 2: -20 } })).toEqual([]));
  it('with a valley before it a peak, without one a shoulder', () => {
    // The lobe falls from 100 to 50 at one half-angle and 21 at one and a half.
    expect(kinds({ above: { 1.5: 10 } })).toEqual(['shoulder']); // 31, and 34 just before it
    expect(kinds({ above: { 1.5: 20 } })).toEqual(['second-peak']); // 41
    expect(kinds({ above: { 2: 40 } })).toEqual(['second-peak']); // 46, and 12 before it
    expect(kinds({ above: { [-2]: 40 } })).toEqual(['second-peak']);
  });
  it('a dip that is no deeper than the noise is no valley', () => {
    // On the way 88, 80 and 64, and 74 there: a dip of 10, and one and a half spreads are asked for.
    const dip = (spread: number) => kinds({ above: { 0.75: 20, 1: 30, 1.25: 30, 1.5: 53 }, spread })[0];
    expect(dip(6)).toBe('second-peak');
    expect(dip(7)).toBe('shoulder');
  });
  it('what lies beyond it, or on the other side of the peak, is no valley before it', () =>
    expect(kinds({ above: { 1: 15 } })).toEqual(['shoulder'])); // 65, and 68 just before it; nothing at the ends
  it('one place is told once, and three at most', () => {
    expect(flags({ above: { 2: 30, 2.25: 28, 2.5: 26, 2.75: 24 } })).toHaveLength(1);
    expect(flags({ above: { 2: 30, 3: 28 } })).toHaveLength(2);
    const many = flags({ above: { [-4]: 5, [-3]: 6, [-2]: 7, 2: 8, 3: 9, 4: 10 } });
    expect(many.map(({ size }) => Math.round(100 * size))).toEqual([10, 9, 8]); // the greatest
    expect(
      flags({ above: { [-3]: 6, [-2]: 7, 2: 8, 3: 9 }, stray: { share: 0.3, at: [0], ownPeak: true } }),
    ).toHaveLength(3);
  });
});

describe('scanFlags over two axes', () => {
  const places = Array.from({ length: 13 }, (_, k) => -3 + 0.5 * k);
  const pan = Float64Array.from(places.flatMap((x) => places.map(() => x)));
  const tilt = Float64Array.from(places.flatMap(() => places));
  const round: Lobe = { ...lobe, centre: [0, 0], halfAngle: [1, 1] };
  const row = (x: number, y: number) => 13 * (2 * x + 6) + 2 * y + 6;
  /** Level of the round lobe with something on top, and a valley filled up with it where asked. */
  const seen = (above: readonly (readonly [x: number, y: number, excess: number])[]) => {
    const level = lobeLevel(round, [pan, tilt]);
    const residuals = new Float64Array(level.length);
    for (const [x, y, excess] of above) residuals[row(x, y)] = excess;
    const fit = {
      n: 169,
      parameters: new Float64Array(6),
      residuals,
      residualSpread: 0.5,
    } as unknown as RobustNonlinearFit;
    return scanFlags({
      lobe: round,
      fit,
      angles: [pan, tilt],
      level: level.map((value, k) => value + (residuals[k] as number)),
      cut: undefined,
      covered: 0,
      centreError: [0.01, 0.01],
      floorError: 0.1,
      stray: undefined,
    });
  };
  it('tells both angles of a place', () =>
    expect(seen([[2, -1.5, 40]])).toEqual([{ kind: 'second-peak', at: [2, -1.5], size: 0.4 }]));
  it('a valley counts only on the way there', () => {
    // 50 at 1.5 along pan; all low places on the way are lifted, those beside it are not.
    const bridge = [
      [1, 0, 5],
      [1.5, 0, 32],
    ] as const;
    expect(seen(bridge).map(({ kind }) => kind)).toEqual(['shoulder']);
    expect(seen([[2, 0, 50]]).map(({ kind }) => kind)).toEqual(['second-peak']);
  });
  it('places apart on one axis only are apart', () => {
    expect(
      seen([
        [2, 0, 30],
        [2, 2, 28],
      ]),
    ).toHaveLength(2);
    expect(
      seen([
        [2, 0, 30],
        [2, 0.5, 28],
      ]),
    ).toHaveLength(1);
  });
});
