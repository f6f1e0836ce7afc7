import { describe, expect, it } from 'vitest';
import { cornerFlameHeight, flameHeight, smallFlameHeight, wallFlameHeight } from './flameHeight.js';

describe('flameHeight', () => {
  it('Enclosure Fire Dynamics, example 4.1: 2.96 m over 1690 kW of 1.6 m', () => {
    expect(Math.abs(flameHeight(1690, 1.6) - 2.96)).toBeLessThanOrEqual(0.01);
  });
  it('is never less than nothing', () => expect(flameHeight(1, 5)).toBe(0));
  it('NUREG-1805: taller at a wall and in a corner than over a small free source', () => {
    expect(wallFlameHeight(700)).toBeCloseTo(2.6805, 4);
    expect(cornerFlameHeight(700)).toBeGreaterThan(smallFlameHeight(700));
  });
  it('says what must change', () => expect(() => flameHeight(-1, 1)).toThrow('heat release rate -1 kW'));
});
