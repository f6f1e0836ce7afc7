import { convert } from 'beamkeep';
import { describe, expect, it } from 'vitest';
import { conversionLine } from './conversion.js';

describe('conversionLine', () => {
  it('says value, path and result', () => {
    const told = convert({ value: 35, from: 'percent', to: 'decibels-per-metre', pathMetres: 50 });
    expect(conversionLine(told)).toBe('35 % obscuration over 50 m of smoke is 0.0374173 dB/m');
  });
  it('says infinite', () => {
    const told = convert({ value: 100, from: 'percent', to: 'decibels' });
    expect(conversionLine(told)).toBe('100 % obscuration is infinite dB');
  });
});
