import { describe, expect, it } from 'vitest';
import { filterLoss } from './testFilter.js';

describe('filterLoss', () => {
  it('law: met twice, decibels double', () => {
    for (const transmittance of [0.1, 0.5, 0.9]) {
      expect(filterLoss(transmittance, 2).decibels).toBeCloseTo(2 * filterLoss(transmittance, 1).decibels, 12);
    }
  });
  it('a black filter loses without end', () => expect(filterLoss(0, 2)).toEqual({ percent: 100, decibels: Infinity }));
});
