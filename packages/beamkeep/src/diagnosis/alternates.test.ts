import { describe, expect, it } from 'vitest';
import { random } from '../simulation/index.js';
import { comesBack, isOfSwing } from './alternates.js';

const rows = 200;
const { uniform } = random(7);
/** A shake: each sample stands off by itself, at any share of the depth. */
const shaken = Array.from({ length: rows }, () => uniform());
const calm = Array.from({ length: rows }, () => 0);
const off = (of: readonly number[]) => (row: number) => of[row] as number;
/** The same with some rows off by so much more. */
const raised = (of: readonly number[], from: number, to: number, more: number) =>
  of.map((v, i) => (i >= from && i <= to ? v + more : v));

describe('comesBack', () => {
  it('is so of a shake, and not of what stays', () => {
    expect(comesBack(off(shaken), 80, 120)).toBe(true);
    expect(comesBack(off(raised(shaken, 80, 119, 1)), 80, 120)).toBe(false);
  });
  it('is not so where one run is longer than chance has it', () =>
    expect(comesBack(off(raised(shaken, 70, 129, 1)), 20, 180)).toBe(false));
});

describe('isOfSwing', () => {
  it('is so of a few deep samples amid a shake', () => expect(isOfSwing(off(shaken), 100, 103, rows)).toBe(true));
  it('is not so of the same out of calm samples, or of what stands among shaken ones', () => {
    expect(isOfSwing(off(raised(calm, 100, 103, 1)), 100, 103, rows)).toBe(false);
    expect(isOfSwing(off(raised(shaken, 90, 115, 1)), 90, 115, rows)).toBe(false);
  });
  it('is not so of puffs of some samples each', () => {
    const puffs = calm.map((_, i) => (i % 16 < 6 ? 1 : 0));
    expect(isOfSwing(off(puffs), 96, 101, rows)).toBe(false);
  });
  it('looks no further than the log', () => {
    const seen: number[] = [];
    const noted = (row: number) => {
      seen.push(row);
      return row % 2;
    };
    isOfSwing(noted, 0, 3, rows);
    isOfSwing(noted, rows - 4, rows - 1, rows);
    expect([Math.min(...seen), Math.max(...seen)]).toEqual([0, rows - 1]);
  });
});
