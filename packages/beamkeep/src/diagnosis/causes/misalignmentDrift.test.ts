import { describe, expect, it } from 'vitest';
import { at, diagnosed, left, measured, recordOf, stated, theOne } from '../../../../../tests/diagnosis/kit.js';
import { lobe, typical } from '../../../../../tests/diagnosis/typical.js';

describe('misalignment-drift', () => {
  const creeping = diagnosed(typical['misalignment-drift']());
  const found = theOne(creeping, 'misalignment-drift');

  it('is told over the whole creep, with the loss, its speeding up and the growth of the sway', () => {
    expect([found.start, found.end, found.ongoing, found.severity]).toEqual([
      creeping.from,
      creeping.to,
      true,
      'watch',
    ]);
    expect(measured(found, 'growth of the loss, as a share of clean air', '%')).toBeCloseTo(
      100 * (1 - left(lobe(0.7))),
      -1,
    );
    expect(measured(found, 'quickening of the growth, 0 for a straight line')).toBeGreaterThan(0.8);
    expect(measured(found, 'growth of the daily sway in dB')).toBeGreaterThan(2);
    expect(measured(found, 'agreement of sway with loss, -1 to 1')).toBeGreaterThan(0.5);
  });
  it('is stated instead of dirt, and dirt instead of it', () => {
    expect(stated(creeping, 'contamination')).toEqual([]);
    expect(stated(diagnosed(typical.contamination()), 'misalignment-drift')).toEqual([]);
  });
  it('is stated of a loss that speeds up beyond doubt, though nobody wrote down what took it back', () => {
    const turned = (t: number): number => 0.6 * Math.max(0, (t - at(10)) / (at(60) - at(10)));
    const takenBack = recordOf((t) => (t < at(60) ? left(lobe(turned(t))) : 1), { days: 80 });
    expect(stated(diagnosed(takenBack), 'misalignment-drift')).toHaveLength(1);
    expect(stated(diagnosed(takenBack), 'contamination')).toEqual([]);
  });
  it.each(['building-movement'] as const)('is not stated of %s', (other) =>
    expect(stated(diagnosed(typical[other]()), 'misalignment-drift')).toEqual([]),
  );
});
