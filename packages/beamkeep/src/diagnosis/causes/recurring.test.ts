import { describe, expect, it } from 'vitest';
import { at, chanceOf, pictured } from '../../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../../tests/diagnosis/typical.js';
import { agreement, daysOf, episodesOf, keepsToTheWeek, meanHour, recent } from './recurring.js';

describe('what recurs', () => {
  const picture = pictured(typical.condensation());
  it('is counted by the local day in which its middle lies', () => {
    const nights = daysOf(picture, 'film');
    expect(nights.size).toBe(20);
    for (const [start, end] of episodesOf(nights.values())) expect(start).toBeLessThan(end);
  });
  it('is recent within the last days of the log', () =>
    expect([recent(picture, at(28), 3), recent(picture, at(20), 3)]).toEqual([true, false]));
  it('agrees in its hours or does not', () => {
    expect(agreement([6, 6, 6])).toBeCloseTo(1, 12);
    expect(agreement([23.5, 0.5])).toBeGreaterThan(0.98);
    expect(agreement([0, 6, 12, 18])).toBeCloseTo(0, 12);
    expect(agreement([])).toBe(0);
  });
  it('has a middle round the clock', () => {
    expect(meanHour([23, 1])).toBeCloseTo(0, 9);
    expect(meanHour([8, 10, 12])).toBeCloseTo(10, 9);
    expect(meanHour([21, 23])).toBeCloseTo(22, 9);
  });
  it('keeps to the week where it leaves out days of it, and by chance does not', () => {
    const days = (comes: (day: number) => boolean, count = 70) =>
      new Set(Array.from({ length: count }, (_, day) => day).filter(comes));
    // Ten weeks, five days of seven: 2 · 70 · entropy of a share of 5/7 in nats.
    const entropy = -((5 / 7) * Math.log(5 / 7) + (2 / 7) * Math.log(2 / 7));
    expect(
      keepsToTheWeek(
        days((day) => day % 7 < 5),
        0,
        69,
      ),
    ).toBeCloseTo(Math.sqrt(2 * 70 * entropy), 9);
    expect(
      keepsToTheWeek(
        days(() => true),
        0,
        69,
      ),
    ).toBe(0);
    expect(keepsToTheWeek(new Set(), 0, 69)).toBe(0);
    const byChance = Array.from({ length: 400 }, (_, k) =>
      keepsToTheWeek(
        days((day) => chanceOf(day, k) < 0.4),
        0,
        69,
      ),
    );
    expect(byChance.filter((value) => value > 3.5).length / byChance.length).toBeLessThan(0.12);
    const mean = byChance.reduce((a, b) => a + b, 0) / byChance.length;
    expect(Math.abs(mean - 2.35)).toBeLessThan(0.25);
  });
});
