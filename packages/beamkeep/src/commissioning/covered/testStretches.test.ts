import { describe, expect, it } from 'vitest';
import { random } from '../../simulation/index.js';
import { noiseOf, testStretches } from './testStretches.js';

/** A sample a second from "seconds:level" parts, without noise: each cut is where the level jumps. */
function logged(plan: string) {
  const power = plan.split(' ').flatMap((part) => {
    const [seconds = 0, level = 0] = part.split(':').map(Number);
    return new Array<number>(seconds).fill(level);
  });
  return { time: Float64Array.from(power, (_, s) => 1000 * s), power: Float64Array.from(power) };
}
const found = (plan: string) => testStretches(logged(plan));

describe('testStretches', () => {
  it('takes clean, covered, clean, less a tenth at each edge where the hand still moves', () =>
    expect(found('60:100 40:4 60:100')).toEqual({
      before: { from: 0, to: 54 },
      covered: { from: 64, to: 96 },
      after: { from: 106, to: 160 },
    }));
  it('cuts at least one sample, and none of a stretch that has no more than six', () => {
    expect(found('7:100 7:4 7:100')).toEqual({
      before: { from: 0, to: 6 },
      covered: { from: 8, to: 13 },
      after: { from: 15, to: 21 },
    });
    expect(found('6:100 6:4 6:100')).toEqual({
      before: { from: 0, to: 6 },
      covered: { from: 6, to: 12 },
      after: { from: 12, to: 18 },
    });
  });
  it('a part that is followed by another is cut at both ends', () =>
    expect(found('20:50 60:100 40:4 60:100 20:50')).toMatchObject({
      before: { from: 26, to: 74 },
      after: { from: 126, to: 174 },
    }));
  it('half covers on either side belong to neither', () =>
    expect(found('60:100 20:60 40:4 20:60 60:100')).toEqual({
      before: { from: 0, to: 54 },
      covered: { from: 84, to: 116 },
      after: { from: 146, to: 200 },
    }));
  it('levels within a tenth of the drop are one stretch, covered or clean', () => {
    expect(found('60:100 20:13 20:4 60:100')).toMatchObject({ covered: { from: 64, to: 96 } });
    expect(found('60:100 20:15 20:4 60:100')).toMatchObject({ covered: { from: 82, to: 98 } });
    expect(found('30:100 30:91 40:4 60:100')).toMatchObject({ before: { from: 0, to: 54 } });
    expect(found('60:100 40:4 30:91 30:100')).toMatchObject({ after: { from: 106, to: 160 } });
  });
  it('of the clean stretches the one next to the cover counts', () =>
    expect(found('40:100 20:60 40:100 40:4 40:100 20:60 40:100')).toMatchObject({
      before: { from: 64, to: 96 },
      after: { from: 144, to: 176 },
    }));
  it('light that came back by more than half is clean again, by less it is not', () => {
    expect(found('60:100 40:4 60:60')).toMatchObject({ after: { from: 106, to: 160 } });
    expect(found('60:100 40:4 60:50')).toEqual({ before: { from: 0, to: 54 }, covered: { from: 64, to: 96 } });
    expect(found('60:50 40:4 60:100')).toEqual({ covered: { from: 64, to: 96 }, after: { from: 106, to: 160 } });
  });
  it('what the light did more than ten minutes from the cover tells nothing', () =>
    expect(found('3000:100 40:4 3000:100')).toEqual({
      before: { from: 2399, to: 2940 },
      covered: { from: 3004, to: 3036 },
      after: { from: 3100, to: 3640 },
    }));
  it('fewer than three samples are no stretch', () => {
    expect(found('6:100 2:4 6:100')).toEqual({ refusal: expect.stringContaining('nothing was covered') });
    expect(found('6:100 3:4 6:100')).toMatchObject({ covered: { from: 6, to: 9 } });
    expect(found('2:100')).toEqual({ refusal: expect.stringContaining('at least 3 samples') });
    expect(found('0:100')).toEqual({ refusal: expect.stringContaining('at least 3 samples') });
  });
  it('a drop of 2 % is none, a little more is one', () => {
    expect(found('60:100 40:98 60:100')).toEqual({ refusal: expect.stringContaining('stays at one level') });
    expect(found('60:100 40:97.9 60:100')).toMatchObject({ covered: { from: 64, to: 96 } });
  });
  it('a drop must stand out of the noise by six spreads', () => {
    const noisy = (covered: number) => {
      const chance = random(5, 'stretches');
      const { time, power } = logged(`60:100 40:${covered} 60:100`);
      return { time, power: power.map((level) => level + 0.8 * chance.normal()) };
    };
    expect(noiseOf(noisy(100))).toBeGreaterThan(0.65);
    expect(noiseOf(noisy(100))).toBeLessThan(0.95);
    expect(testStretches(noisy(96.4))).toHaveProperty('refusal'); // four and a half spreads
    expect(testStretches(noisy(94))).toHaveProperty('covered'); // seven and a half
  });
  it('a rounded scale is no better known than its step', () =>
    expect(noiseOf({ ...logged('60:100'), step: 1 })).toBeCloseTo(1 / Math.sqrt(12) / Math.SQRT2, 6));
  it('a beam that is dark all along was not uncovered', () =>
    expect(found('100:0')).toEqual({ refusal: expect.stringContaining('stays at one level') }));
});
