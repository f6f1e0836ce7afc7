import { describe, expect, it } from 'vitest';
import { at, dayOf, diagnosed, measured, stated, theOne } from '../../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../../tests/diagnosis/typical.js';

describe('process-aerosol', () => {
  it('is one spell of the working days, in their hours', () => {
    const found = theOne(diagnosed(typical['process-aerosol']()), 'process-aerosol');
    expect(found.episodes).toHaveLength(22);
    for (const [start, end] of found.episodes ?? []) {
      expect(dayOf(start) % 7).toBeLessThan(5);
      expect(start).toBeGreaterThanOrEqual(at(dayOf(start), 8));
      expect(end).toBeLessThan(at(dayOf(start), 17));
    }
    expect([found.start, found.end]).toEqual([found.episodes?.[0]?.[0], found.episodes?.at(-1)?.[1]]);
    expect(measured(found, 'days')).toBe(22);
    expect(measured(found, 'dips a day')).toBeGreaterThan(1);
    expect(measured(found, 'agreement of the hours, 0 to 1')).toBeGreaterThan(0.7);
  });
  it.each(['condensation', 'vibration'] as const)('is not stated of %s', (other) =>
    expect(stated(diagnosed(typical[other]()), 'process-aerosol')).toEqual([]),
  );
});
