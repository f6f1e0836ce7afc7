import { describe, expect, it } from 'vitest';
import {
  at,
  diagnosed,
  hourOf,
  left,
  measured,
  recordOf,
  rise,
  stated,
  theOne,
} from '../../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../../tests/diagnosis/typical.js';
import { hour } from '../../columns/index.js';

describe('condensation', () => {
  it('is one spell of all misty nights, with depth, length and hour', () => {
    const found = theOne(diagnosed(typical.condensation()), 'condensation');
    expect(found.episodes).toHaveLength(20);
    expect(Math.abs(found.start - at(0, 3.2))).toBeLessThan(hour);
    expect(Math.abs(found.end - at(28, 8))).toBeLessThan(hour);
    expect(found.ongoing).toBe(false);
    expect(measured(found, 'nights')).toBe(20);
    // Between 0.4 and 0.7 dB were put in.
    expect(measured(found, 'depth, median')).toBeCloseTo(100 * (1 - left(0.55)), -0.7);
    expect(measured(found, 'length, median')).toBeCloseTo(5, 0);
    expect(measured(found, 'solar time of the middle')).toBeCloseTo(5.5, 0);
  });
  it('is two findings where the nights lie more than 7.5 days apart', () => {
    const misty = (t: number): boolean => (t > at(2) && t < at(7)) || (t > at(20) && t < at(25));
    const film = (t: number): number => rise(hourOf(t), 2.5, 5) * (1 - rise(hourOf(t), 6, 8.5));
    const two = recordOf((t) => left(misty(t) ? 0.6 * film(t) : 0), { days: 30 });
    expect(stated(diagnosed(two), 'condensation').map(({ episodes }) => episodes?.length)).toEqual([5, 5]);
  });
  it.each(['process-aerosol', 'building-movement'] as const)('is not stated of %s', (other) =>
    expect(stated(diagnosed(typical[other]()), 'condensation')).toEqual([]),
  );
});
