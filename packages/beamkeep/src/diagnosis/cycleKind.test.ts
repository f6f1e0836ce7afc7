import { describe, expect, it } from 'vitest';
import { left, pictured, recordOf } from '../../../../tests/diagnosis/kit.js';
import { heatOfDay, lobe, typical } from '../../../../tests/diagnosis/typical.js';
import { mayBeMovement } from './cycleKind.js';

describe('mayBeMovement', () => {
  it('bends the whole day', () => {
    expect(mayBeMovement(pictured(typical['building-movement']()).shape)).toBe(true);
    expect(mayBeMovement(pictured(recordOf((t) => left(lobe(0.3 * heatOfDay(t))), { days: 20 })).shape)).toBe(true);
  });
  it.each(['condensation', 'process-aerosol'] as const)('is not %s', (cause) => {
    const { shape } = pictured(typical[cause]());
    expect(shape.days).toBeGreaterThan(10);
    expect(mayBeMovement(shape)).toBe(false);
  });
  it('tells the hours in which mist stands', () => {
    const { shape } = pictured(typical.condensation());
    expect(shape.darkAt).toBeGreaterThan(4);
    expect(shape.darkAt).toBeLessThan(7);
    expect(shape.agreement).toBeGreaterThan(0.9);
  });
});
