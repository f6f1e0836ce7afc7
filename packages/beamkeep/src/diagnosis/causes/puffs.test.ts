import { describe, expect, it } from 'vitest';
import { chanceOf, dayOf, hourOf, left, pictured, recordOf, rise } from '../../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../../tests/diagnosis/typical.js';
import { minute } from '../../columns/index.js';
import type { Excursion } from '../excursions.js';
import type { Picture } from '../picture.js';
import { puffs } from './puffs.js';
import { byDay } from './recurring.js';

/** The dips of a record, day by day. */
const dips = (picture: Picture): Excursion[][] => [
  ...byDay(
    picture,
    picture.excursions.filter((e) => e.sign === 1),
  ).values(),
];

describe('puffs', () => {
  it('come quicker than they go', () => {
    const dust = pictured(typical['process-aerosol']());
    const { steepness, lingers } = puffs(dust, dips(dust));
    expect(steepness).toBeGreaterThan(1);
    expect(lingers).toBeGreaterThan(0.3);
  });
  it('are not what comes and goes alike', () => {
    const hump = (t: number): number =>
      dayOf(t) % 7 < 5 ? 0.4 * rise(hourOf(t), 9, 10) * (1 - rise(hourOf(t), 10.5, 11.5)) : 0;
    const even = pictured(recordOf((t) => left(hump(t)), { days: 20 }));
    const { steepness, lingers } = puffs(even, dips(even));
    expect(Math.abs(steepness)).toBeLessThan(0.5);
    expect(Math.abs(lingers)).toBeLessThan(0.2);
  });
  it('are not single samples that are strangers to each other', () => {
    const shaken = (t: number): number =>
      hourOf(t) > 8 && hourOf(t) < 16 ? 0.2 * Math.sin(2 * Math.PI * chanceOf(Math.floor(t / minute), 6)) ** 2 : 0;
    const peak = pictured(recordOf((t) => 1 - shaken(t), { days: 20 }));
    const { steepness } = puffs(peak, dips(peak));
    expect(Math.abs(steepness)).toBeLessThan(0.5);
  });
});
