import { describe, expect, it } from 'vitest';
import {
  at,
  dayOf,
  diagnosed,
  hourOf,
  left,
  measured,
  pictured,
  recordOf,
  rise,
  stated,
  theOne,
} from '../../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../../tests/diagnosis/typical.js';
import { hour } from '../../columns/index.js';
import type { Excursion } from '../excursions.js';
import { condensation } from './condensation.js';

describe('condensation', () => {
  it('is one spell of all misty nights, with depth, length and hour', () => {
    const found = theOne(diagnosed(typical.condensation()), 'condensation');
    expect(found.episodes).toHaveLength(20);
    expect(Math.abs(found.start - at(0, 3.2))).toBeLessThan(hour);
    expect(Math.abs(found.end - at(28, 8))).toBeLessThan(hour);
    expect(found.ongoing).toBe(false);
    expect(measured(found, 'nights')).toBe(20);
    expect(measured(found, 'share of nights in the spell')).toBeCloseTo(20 / 29, 3);
    // Between 0.4 and 0.7 dB were put in.
    expect(measured(found, 'depth, median')).toBeCloseTo(100 * (1 - left(0.55)), -0.7);
    expect(measured(found, 'length, median')).toBeCloseTo(5, 0);
    expect(measured(found, 'solar time of the middle')).toBeCloseTo(5.5, 0);
  });
  it('is two findings where the nights lie more than 7.5 days apart', () => {
    const misty = (t: number): boolean => (t > at(2) && t < at(7)) || (t > at(20) && t < at(25));
    const film = (t: number): number => rise(hourOf(t), 2.5, 5) * (1 - rise(hourOf(t), 6, 8.5));
    const two = recordOf((t) => left(misty(t) ? 0.6 * film(t) : 0), { days: 30 });
    const found = stated(diagnosed(two), 'condensation');
    expect(found.map(({ episodes }) => episodes?.length)).toEqual([5, 5]);
    for (const spell of found) expect(measured(spell, 'share of nights in the spell')).toBe(1);
  });
  it('is the less likely the more rises as large and as long stand beside it, and where its hours disagree', () => {
    const misty = (t: number): boolean => t > at(4) && t < at(6);
    const film = (t: number): number => rise(hourOf(t), 2.5, 5) * (1 - rise(hourOf(t), 6, 8.5));
    const picture = pictured(recordOf((t) => left(misty(t) ? 0.6 * film(t) : 0), { days: 20 }));
    const surely = (excursions: readonly Excursion[], kind = picture.kind): number =>
      condensation.claims({ ...picture, excursions, kind })[0]?.confidence ?? 0;
    const dips = picture.excursions.filter((e) => picture.kind.get(e) === 'film');
    expect(dips).toHaveLength(2);
    const moved = (e: Excursion, hours: number, sign: 1 | -1): Excursion => ({
      ...e,
      sign,
      start: e.start + hours * hour,
      end: e.end + hours * hour,
    });
    const rises = dips.map((e) => moved(e, 72, -1));
    const [first, second] = dips as [Excursion, Excursion];
    const odds = (p: number): number => p / (1 - p);
    expect(odds(surely([...dips, ...rises.slice(1)]))).toBeLessThan(0.6 * odds(surely(dips)));
    expect(odds(surely([...dips, ...rises]))).toBeLessThan(odds(surely(dips)) / 3);
    const byDay = moved(second, 11, 1);
    const kind = new Map([...picture.kind, [byDay, 'film'] as const]);
    expect(surely([first, byDay], kind)).toBeLessThan(0.1 * surely(dips));
  });
  it('counts nights whose mist grows as smoke may, from three on, and takes no smoke away', () => {
    const nights: [date: number, decibels: number, comes: number, goes: number][] = [
      [4, 0.5, 2.5, 3],
      [9, 2.6, 1.5, 1.5],
      [16, 1.3, 1, 4],
    ];
    const found = (dates: number[]) =>
      diagnosed(
        recordOf(
          (t) => {
            const night = nights.find(([date]) => date === dayOf(t) && dates.includes(date));
            if (night === undefined) return 1;
            const [, decibels, comes, goes] = night;
            return left(decibels * rise(hourOf(t), 4 - comes, 4) * (1 - rise(hourOf(t), 5, 5 + goes)));
          },
          { days: 24, intervalSeconds: 120 },
        ),
      );
    const all = found([4, 9, 16]);
    expect(theOne(all, 'condensation').episodes).toHaveLength(3);
    expect(stated(all, 'smoke-like')).toHaveLength(2);
    expect(stated(found([4, 9]), 'condensation')).toEqual([]);
  });
  it.each(['process-aerosol', 'building-movement'] as const)('is not stated of %s', (other) =>
    expect(stated(diagnosed(typical[other]()), 'condensation')).toEqual([]),
  );
});
