import { describe, expect, it } from 'vitest';
import { effectiveDiameter, virtualOrigin } from './origin.js';

describe('virtualOrigin', () => {
  it('Enclosure Fire Dynamics, example 4.3: about 0.01 m below 1690 kW of 1.6 m', () => {
    expect(Math.abs(virtualOrigin(1690, 1.6) + 0.01)).toBeLessThanOrEqual(0.005);
  });
  it('NUREG-1805, eq. 9-4: 3.205 m2 is 2.02 m across', () => {
    expect(Math.abs(effectiveDiameter(3.205) - 2.02)).toBeLessThanOrEqual(0.001);
  });
  it('says what must change', () => expect(() => effectiveDiameter(0)).toThrow('area 0 m²'));
});
