import { describe, expect, it } from 'vitest';
import { clockTime, counted, evidence, logistic, percent, round, spell } from './wording.js';

describe('words for numbers', () => {
  it('percent: three digits', () => expect([percent(0.12345), percent(1)]).toEqual([12.3, 100]));
  it('round: significant digits, and what is no number stays', () => {
    expect(round(0.00123456, 3)).toBe(0.00123);
    expect(round(Number.NaN, 3)).toBeNaN();
    expect(round(Number.POSITIVE_INFINITY, 3)).toBe(Number.POSITIVE_INFINITY);
  });
  it('evidence: measure, value, unit', () =>
    expect(evidence('depth', 12.34567, '%')).toEqual({ measure: 'depth', value: 12.35, unit: '%' }));
  it('spell: the unit that a person would use', () =>
    expect([90e3, 600e3, 5400e3, 36 * 3600e3, 5 * 86_400e3].map(spell)).toEqual([
      '90 s',
      '10 min',
      '90 min',
      '36 h',
      '5 days',
    ]));
  it('counted: one or many', () => expect([counted(1, 'night'), counted(3, 'night')]).toEqual(['1 night', '3 nights']));
  it('clockTime: round the clock', () =>
    expect([0, 6.667, 23.9999, -1, 25].map(clockTime)).toEqual(['00:00', '06:40', '00:00', '23:00', '01:00']));
  it('logistic: from 0 over a half to 1', () =>
    expect([-50, 0, 50].map(logistic).map((x) => round(x, 3))).toEqual([1.93e-22, 0.5, 1]));
});
