import { describe, expect, it } from 'vitest';
import type { DailyLoss } from './dailyLoss.js';
import { draws } from './draws.js';
import { clocked, type WeighedLaw, weighedLaws } from './laws.js';
import { readings } from './readings.js';
import { evenWeek } from './soilingWeek.js';

/* Day 0 is a Thursday. Each reading is off by 0.002 dB. */

function known(length: number, loss: (at: number) => number, seed = 5) {
  const draw = draws(seed);
  const days: DailyLoss[] = Array.from({ length }, (_, at) => ({ at, loss: loss(at) + 0.002 * draw.normal(), run: 0 }));
  const of = readings(days, []);
  if (!of) throw new Error('no trend');
  return of;
}
/** Steady dirt, none of it on some weekdays. */
const work = (resting: readonly number[]) => (at: number) =>
  0.02 * Array.from({ length: at }, (_, passed) => passed % 7).filter((weekday) => !resting.includes(weekday)).length;
const belief = (laws: readonly WeighedLaw[], of: (law: WeighedLaw) => boolean) =>
  laws.filter(of).reduce((sum, { weight }) => sum + weight, 0);
/** Grows by gains whose spread, as a share of their mean, is given; the mean is the same. */
function uneven(length: number, spread: number) {
  const draw = draws(9);
  let loss = 0;
  const course = Array.from({ length }, () => (loss += spread > 0 ? draw.gamma(0.02, (0.02 * spread) ** 2) : 0.02));
  return (at: number) => course[at] as number;
}

describe('clocked', () => {
  /** Weekdays, from Thursday on, on which little soils. */
  const restOf = (loss: (at: number) => number, length = 70) => {
    const { clock } = clocked(known(length, loss));
    return [0, 1, 2, 3, 4, 5, 6].filter((at) => clock(at + 1) - clock(at) < 0.5);
  };
  it('finds the days of rest: a reading stands for what the days before it brought', () => {
    expect(restOf(work([2, 3]))).toEqual([2, 3]);
    expect(restOf(work([3]))).toEqual([3]);
    expect(restOf(work([6, 0]))).toEqual([0, 6]);
  });
  it('of dirt that comes every day it takes none, nor of a record that cannot tell', () => {
    expect(clocked(known(70, work([]))).clock).toBe(evenWeek);
    expect(clocked(known(70, uneven(70, 1.5))).clock).toBe(evenWeek);
  });
});

describe('weighedLaws', () => {
  const laws = (length: number, loss: (at: number) => number, creeping = false) =>
    weighedLaws({ ...known(length, loss), clock: evenWeek }, creeping);
  it('shares out all belief, and leaves out what has next to none', () => {
    const all = laws(60, uneven(60, 0.5));
    expect(belief(all, () => true)).toBeCloseTo(1, 12);
    const most = all.reduce((best, { weight }) => Math.max(best, weight), 0);
    for (const { weight } of all) expect(weight).toBeGreaterThan(0.9e-4 * most);
  });
  it('believes in dB or in obscuration, as the readings say', () => {
    const steady = laws(80, (at) => 0.02 * at);
    const obscured = laws(80, (at) => -10 * Math.log10(1 - 0.0038 * at));
    const inDecibels = ({ shape }: WeighedLaw) => shape.kind === 'steady';
    const inObscuration = ({ shape }: WeighedLaw) => shape.kind === 'obscuration' && shape.share === 1;
    expect(belief(steady, inDecibels)).toBeGreaterThan(0.8);
    expect(belief(obscured, inObscuration)).toBeGreaterThan(0.8);
  });
  it('believes in a ceiling where growth levels off, and about where it is', () => {
    const levelling = laws(90, (at) => 0.8 * (1 - Math.exp(-at / 30)));
    const near = ({ shape }: WeighedLaw) => shape.kind === 'ceiling' && shape.at > 0.75 && shape.at < 0.9;
    expect(belief(levelling, near)).toBeGreaterThan(0.8);
  });
  it('believes in lumps where days differ as lumps make them, and in none where they do not', () => {
    const lumpy = (spread: number, length = 80) => {
      const all = laws(length, uneven(length, spread));
      return all.reduce((sum, { weight, burst }) => sum + weight * burst, 0);
    };
    expect(lumpy(0)).toBeLessThan(0.1);
    expect(lumpy(1)).toBeGreaterThan(0.5); // a day of growth
    expect(lumpy(1)).toBeLessThan(2);
    expect(lumpy(2)).toBeGreaterThan(2.5); // four
  });
  it('finds the noise of a reading, whatever the dirt does', () => {
    for (const spread of [0, 1]) {
      const all = laws(80, uneven(80, spread));
      const noise = all.reduce((sum, { weight, noise: one }) => sum + weight * one, 0);
      expect(noise).toBeGreaterThan(0.0005);
      expect(noise).toBeLessThan(spread === 0 ? 0.004 : 0.012);
    }
  });
  it('an aim that is known to creep speeds up by its own law', () => {
    const squares = (at: number): number => (0.016 * at) ** 2;
    const creep = ({ shape }: WeighedLaw) => shape.kind === 'creep';
    expect(belief(laws(60, squares, true), creep)).toBeGreaterThan(0.9);
    expect(belief(laws(60, squares), creep)).toBe(0);
    expect(
      belief(
        laws(60, (at) => 0.02 * at, true),
        creep,
      ),
    ).toBeLessThan(0.1);
  });
});
