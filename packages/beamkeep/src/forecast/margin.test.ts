import { describe, expect, it } from 'vitest';
import { margin } from './margin.js';

describe('margin', () => {
  it('ends in an alarm where nothing makes up for dirt: 35 % are 10 log10(1 / 0.65) dB', () => {
    const { decibels, obscuration, ends } = margin({ alarmThreshold: 35, compensation: 'none' });
    expect(decibels).toBeCloseTo(10 * Math.log10(1 / 0.65), 12);
    expect(obscuration).toBe(35);
    expect(ends).toBe('alarm');
  });
  it('counts on nothing that is not known', () =>
    expect(margin({ alarmThreshold: 35, compensation: 'unknown' }).ends).toBe('alarm'));
  it('ends at the limit of the compensation, EN 54-12:2002, 4.8: 3 dB are 49.9 %', () => {
    const { decibels, obscuration, ends } = margin({ alarmThreshold: 35, compensation: { limitDecibels: 3 } });
    expect(decibels).toBe(3);
    expect(obscuration).toBeCloseTo(100 * (1 - 10 ** -0.3), 10);
    expect(ends).toBe('compensation-limit');
  });
});
