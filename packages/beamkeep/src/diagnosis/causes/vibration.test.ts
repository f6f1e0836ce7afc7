import { describe, expect, it } from 'vitest';
import { at, diagnosed, measured, recordOf, stated, theOne } from '../../../../../tests/diagnosis/kit.js';
import { typical } from '../../../../../tests/diagnosis/typical.js';
import { second } from '../../columns/index.js';

describe('vibration', () => {
  it('is told by its alias where the sampling is slow, and says what the sampling can show', () => {
    const found = theOne(diagnosed(typical.vibration()), 'vibration');
    expect(Math.abs(found.start - at(0, 8))).toBeLessThan(900 * second);
    expect(Math.abs(found.end - at(9, 16))).toBeLessThan(900 * second);
    expect(measured(found, 'fastest shaking that the sampling can show')).toBeCloseTo(1 / 120, 5);
    expect(measured(found, 'steadiness of the swing, 0 to 1')).toBeGreaterThan(0.5);
    expect(measured(found, 'greatest deviation over the spread')).toBeLessThan(3.5);
  });
  it('is told by its line where the sampling is fast', () => {
    const [from, to] = [at(0, 0.2), at(0, 0.4)];
    const shaking = (t: number): number =>
      t > from && t < to ? 0.03 * Math.sin((2 * Math.PI * 3.2 * (t - from)) / second) : 0;
    const found = theOne(
      diagnosed(recordOf((t) => 1 + shaking(t), { days: 0.6 / 24, intervalSeconds: 0.1 })),
      'vibration',
    );
    expect(Math.abs(found.start - from)).toBeLessThan(30 * second);
    expect(Math.abs(found.end - to)).toBeLessThan(30 * second);
    expect(measured(found, 'fastest shaking that the sampling can show')).toBe(5);
  });
  it.each(['electrical-noise', 'process-aerosol'] as const)('is not stated of %s', (other) =>
    expect(stated(diagnosed(typical[other]()), 'vibration')).toEqual([]),
  );
});
