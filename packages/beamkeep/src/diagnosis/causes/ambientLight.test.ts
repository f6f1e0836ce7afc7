import { describe, expect, it } from 'vitest';
import {
  at,
  dayOf,
  diagnosed,
  hourOf,
  measured,
  recordOf,
  stated,
  theOne,
} from '../../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../../tests/diagnosis/typical.js';
import { minute } from '../../columns/index.js';

describe('ambient-light', () => {
  it('is one spell of the sunny days, with the change and its solar hour', () => {
    const found = theOne(diagnosed(typical['ambient-light']()), 'ambient-light');
    expect(found.episodes).toHaveLength(23);
    expect(Math.abs(found.start - at(0, 16.1))).toBeLessThan(10 * minute);
    expect(Math.abs(found.end - at(29, 17.2))).toBeLessThan(10 * minute);
    expect(measured(found, 'change, median of the days')).toBeCloseTo(8, 0);
    expect(measured(found, 'solar time')).toBeCloseTo(16.65, 0);
    expect(measured(found, 'share of raised levels')).toBe(1);
    expect([found.severity, found.ongoing]).toEqual(['note', false]);
  });
  it('knows lamps, on and off at the same minute', () => {
    const lamps = recordOf((t) => (dayOf(t) % 7 < 5 && hourOf(t) >= 7 && hourOf(t) < 9 ? 1.05 : 1), { days: 30 });
    const found = theOne(diagnosed(lamps), 'ambient-light');
    expect(found.start).toBe(at(0, 7));
    // The fit of the daily cycle takes a part of what comes every working day.
    expect(measured(found, 'change, median of the days')).toBeGreaterThan(3.5);
    expect(measured(found, 'change, median of the days')).toBeLessThan(5.5);
  });
  it('knows a receiver that the sun blinds', () => {
    const blind = recordOf((t) => (dayOf(t) % 4 < 3 && hourOf(t) >= 16 && hourOf(t) < 17 ? 0.8 : 1), { days: 30 });
    expect(measured(theOne(diagnosed(blind), 'ambient-light'), 'share of raised levels')).toBe(0);
  });
  it.each(['process-aerosol', 'obstruction'] as const)('is not stated of %s', (other) =>
    expect(stated(diagnosed(typical[other]()), 'ambient-light')).toEqual([]),
  );
});
