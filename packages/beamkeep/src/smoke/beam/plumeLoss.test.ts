import { describe, expect, it } from 'vitest';
import { plumeAt } from '../plume/heskestad.js';
import { plumeDepth } from './plumeLoss.js';

const plume = plumeAt({ heat: 300, radiativeShare: 0.35, diameter: 0.8 }, 10);

describe('plumeDepth', () => {
  it('derived case: 300 kW of foam at 10 m hide 94 % of one crossing in red light', () => {
    expect(100 * -Math.expm1(-plumeDepth(plume, 2.208e-3, 8700, 0))).toBeCloseTo(94.2, 0);
  });
  it('law: falls off beside the axis, and doubles with the smoke', () => {
    const at = (aside: number, smoke = 1e-3) => plumeDepth(plume, smoke, 8700, aside);
    expect(at(1)).toBeLessThan(at(0));
    expect(at(plume.width)).toBeCloseTo(at(0) / Math.E, 12);
    expect(at(0.5, 2e-3)).toBeCloseTo(2 * at(0.5), 12);
  });
  it('is nothing where there is no plume yet', () => {
    expect(plumeDepth({ ...plume, radius: 0, width: 0 }, 1e-3, 8700, 0)).toBe(0);
  });
  it('an even plume is the careful choice: a Gaussian one of the same flow hides half as much again', () => {
    const { width, speed } = plume;
    const flow = speed * Math.PI * (1 / width ** 2 + 1 / (1.1 * width) ** 2) ** -1;
    const gaussian = (8700 * 1e-3 * width * Math.sqrt(Math.PI)) / flow;
    expect(gaussian / plumeDepth(plume, 1e-3, 8700, 0)).toBeGreaterThan(1.4);
    expect(gaussian / plumeDepth(plume, 1e-3, 8700, 0)).toBeLessThan(1.8);
  });
});
