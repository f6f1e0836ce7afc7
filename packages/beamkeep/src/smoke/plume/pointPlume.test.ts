import { describe, expect, it } from 'vitest';
import { pointPlume } from './pointPlume.js';

describe('pointPlume', () => {
  it('Enclosure Fire Dynamics, example 4.2: 0.95 kg/s and 73 K at 2 m over 70 kW', () => {
    const { massFlow, rise } = pointPlume(70, 2, { temperature: 293, density: 1.2, specificHeat: 1, gravity: 9.81 });
    expect(Math.abs(massFlow - 0.95)).toBeLessThanOrEqual(0.01);
    expect(Math.abs(rise - 73)).toBeLessThanOrEqual(1);
  });
  it('law: what it carries is its heat', () => {
    const { massFlow, rise } = pointPlume(100, 5);
    expect(massFlow * rise * 1.005).toBeCloseTo(100, 9); // 0.20 x 5.0 = 1
  });
});
