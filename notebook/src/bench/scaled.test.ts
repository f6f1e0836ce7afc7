import { describe, expect, it } from 'vitest';
import { lossCeiling, scaled, scaledThreshold } from './scaled.js';

describe('scaled', () => {
  it('the same light on three scales', () => {
    expect(scaled(0.5, 'level')).toBe(50);
    expect(scaled(0.5, 'obscuration')).toBe(50);
    expect(scaled(0.5, 'loss')).toBeCloseTo(3.0103, 4);
    expect(scaledThreshold(35, 'loss')).toBeCloseTo(1.871, 3);
    expect(scaledThreshold(35, 'obscuration')).toBeCloseTo(35, 12);
  });

  it('nothing received is the ceiling, more than clean air is a negative loss', () => {
    expect(scaled(0, 'loss')).toBe(lossCeiling);
    expect(scaled(-0.01, 'loss')).toBe(lossCeiling);
    expect(scaled(1.02, 'loss')).toBeLessThan(0);
    expect(scaled(1.02, 'obscuration')).toBeCloseTo(-2);
  });

  it('missing stays missing', () => {
    for (const scale of ['level', 'obscuration', 'loss'] as const) expect(scaled(Number.NaN, scale)).toBeNaN();
  });
});
