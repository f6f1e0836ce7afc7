import { describe, expect, it } from 'vitest';
import { deciview } from './deciview.js';

describe('deciview', () => {
  it('is 0 in the clearest air and rises by about 1 for each 10 % (Pitchford and Malm)', () => {
    expect(deciview(1e-5)).toBe(0);
    expect(Math.abs(deciview(1.1e-5) - 1)).toBeLessThan(0.05);
  });

  it('missing stays missing, negative is refused', () => {
    expect(deciview(Number.NaN)).toBeNaN();
    expect(() => deciview(-1)).toThrow('extinction -1 1/m must be 0 or more');
  });
});
