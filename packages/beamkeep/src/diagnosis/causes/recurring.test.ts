import { describe, expect, it } from 'vitest';
import { at, pictured } from '../../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../../tests/diagnosis/typical.js';
import { agreement, daysOf, episodesOf, meanHour, recent } from './recurring.js';

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
});
