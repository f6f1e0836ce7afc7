import { describe, expect, it } from 'vitest';
import { dirtShift, usualDirt } from './dirtShift.js';

const bare = { alarmThreshold: 35, compensation: 'none' } as const;

describe('dirtShift', () => {
  it('with 20 % of dirt, 18.75 % of smoke alarms at 35 %', () =>
    expect(dirtShift(bare, 20)).toMatchObject({ smoke: expect.closeTo(18.75, 10), ends: 'no' }));
  it('law: decibels of dirt and of smoke make up the threshold', () => {
    for (const dirt of usualDirt) {
      const { smokeDecibels } = dirtShift(bare, dirt);
      expect(smokeDecibels - 10 * Math.log10(1 - dirt / 100)).toBeCloseTo(-10 * Math.log10(0.65), 10);
    }
  });
  it('dirt beyond the threshold is an alarm without smoke', () =>
    expect(dirtShift(bare, 40)).toEqual({ dirt: 40, smoke: 0, smokeDecibels: 0, ends: 'alarm' }));
  it('compensation holds the threshold up to its limit, and then ends in a fault', () => {
    const compensated = { alarmThreshold: 35, compensation: { limitDecibels: 1 } } as const;
    expect(dirtShift(compensated, 20)).toMatchObject({ smoke: 35, ends: 'no' });
    const beyond = dirtShift(compensated, 25);
    expect(beyond.ends).toBe('fault');
    expect(beyond.smokeDecibels).toBeCloseTo(1.8709 - (1.2494 - 1), 3);
  });
  it('refuses what is no loss', () => {
    expect(() => dirtShift(bare, 100)).toThrow('dirt 100 %');
    expect(() => dirtShift(bare, Number.NaN)).toThrow('dirt NaN %');
  });
  it('no dirt moves nothing; at the limit of the compensation its fault is there', () => {
    expect(dirtShift(bare, 0)).toMatchObject({ smoke: expect.closeTo(35, 10), ends: 'no' });
    const limit = { alarmThreshold: 35, compensation: { limitDecibels: -10 * Math.log10(0.75) } } as const;
    expect(dirtShift(limit, 25)).toMatchObject({ smoke: expect.closeTo(35, 9), ends: 'fault' });
    expect(dirtShift(limit, 24.9)).toEqual({
      dirt: 24.9,
      smoke: 35,
      smokeDecibels: expect.closeTo(1.8709, 4),
      ends: 'no',
    });
    expect(dirtShift({ ...bare, compensation: 'unknown' }, 20).smoke).toBeCloseTo(18.75, 10);
  });
  it('dirt of just the threshold leaves no smoke to wait for', () =>
    expect(dirtShift(bare, 35)).toMatchObject({ smoke: 0, ends: 'alarm' }));
  it('dirt below nothing is none', () => expect(() => dirtShift(bare, -1)).toThrow('from 0, below 100'));
});
