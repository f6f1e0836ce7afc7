import { describe, expect, it } from 'vitest';
import { dayOf, diagnosed, hourOf, left, pictured, recordOf, theOne } from '../../../../tests/diagnosis/kit.js';
import { heatOfDay, lobe, typical } from '../../../../tests/diagnosis/typical.js';
import { mayBeMovement } from './cycleKind.js';

describe('mayBeMovement', () => {
  it('bends the whole day', () => {
    expect(mayBeMovement(pictured(typical['building-movement']()).shape)).toBe(true);
    expect(mayBeMovement(pictured(recordOf((t) => left(lobe(0.3 * heatOfDay(t))), { days: 20 })).shape)).toBe(true);
  });
  it('knows a broad hump by day under noise that makes it ragged', () => {
    const humps = recordOf((t) => 1 - 0.025 * Math.max(0, Math.sin(((hourOf(t) - 8) / 12) * Math.PI)), {
      days: 20,
      noise: 0.012,
    });
    const { shape } = pictured(humps);
    expect(shape.raggedness).toBeGreaterThan(1.2 * shape.smoothRaggedness);
    expect(mayBeMovement(shape)).toBe(true);
  });
  it.each(['condensation', 'process-aerosol'] as const)('is not %s', (cause) => {
    const { shape } = pictured(typical[cause]());
    expect(shape.days).toBeGreaterThan(10);
    expect(mayBeMovement(shape)).toBe(false);
  });
  it('is not a lamp that is switched on for hours every day: light stays to be seen', () => {
    const lit = recordOf((t) => (hourOf(t) >= 12.3 && hourOf(t) < 18 ? 1.04 : 1), { days: 20, noise: 0.003 });
    const { shape } = pictured(lit);
    expect(mayBeMovement(shape)).toBe(false);
    // Dips at once hide movement, as does what comes and goes all day; a turn of the head adds no light.
    const others = [
      { darkHours: 6 },
      { smoothRaggedness: 1.8 },
      { raggedness: 2.5 },
      { clearLoss: 0.2 },
      { switched: 0.6 },
    ];
    for (const other of others) expect(mayBeMovement({ ...shape, ...other })).toBe(true);
    expect(theOne(diagnosed(lit), 'ambient-light').episodes?.length).toBeGreaterThanOrEqual(19);
  });
  it('comes nearly every day, also in the hours of mist', () => {
    const hump = (t: number): number => 0.2 * Math.max(0, Math.sin(((hourOf(t) - 1) / 11) * Math.PI));
    const nights = (without: number): boolean =>
      mayBeMovement(pictured(recordOf((t) => 1 - (dayOf(t) % without === 0 ? 0 : hump(t)), { days: 20 })).shape);
    expect(nights(Number.POSITIVE_INFINITY)).toBe(true);
    expect(nights(4)).toBe(false);
  });
  it('tells the hours in which mist stands', () => {
    const { shape } = pictured(typical.condensation());
    expect(shape.darkAt).toBeGreaterThan(4);
    expect(shape.darkAt).toBeLessThan(7);
    expect(shape.agreement).toBeGreaterThan(0.9);
  });
});
