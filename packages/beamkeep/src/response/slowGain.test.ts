import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { decibelsToPercent, percentToDecibels } from '../attenuation/index.js';
import { slowFireLimit } from './slowFireLimit.js';
import { fastestGainShare, type SlowGainMemory, slowGain } from './slowGain.js';

const hour = 3_600_000;

/** When a loss that rises evenly first passes the threshold, past the gain [s]; infinity in 30 days. */
function timeToAlarm(alarmThreshold: number, decibelsPerHour: number, limitDecibels: number): number {
  const gain = slowGain({ limitDecibels }, alarmThreshold);
  for (let time = 0; time < 720 * hour; time += 10_000) {
    const seen = gain.feed(time, decibelsToPercent((decibelsPerHour * time) / hour));
    if (seen.obscuration >= alarmThreshold - 1e-9) return time / 1000;
  }
  return Number.POSITIVE_INFINITY;
}

describe('slowGain', () => {
  it('follows a slow loss and gives it back', () => {
    const gain = slowGain({ limitDecibels: 2, decibelsPerHour: 0.1 }, 35);
    gain.feed(0, 5);
    expect(gain.feed(10 * hour, 5).obscuration).toBeCloseTo(0, 12);
    expect(gain.memory().gain).toBeCloseTo(percentToDecibels(5), 12);
    gain.feed(20 * hour, 0);
    expect(gain.memory().gain).toBe(0);
  });
  it('moves no faster than its rate', () => {
    const gain = slowGain({ limitDecibels: 2, decibelsPerHour: 0.1 }, 35);
    gain.feed(0, 20);
    gain.feed(hour, 20);
    expect(gain.memory().gain).toBeCloseTo(0.1, 12);
  });
  it('ends at its limit, and says so', () => {
    const gain = slowGain({ limitDecibels: 0.5, decibelsPerHour: 1 }, 35);
    expect(gain.feed(0, 20).atLimit).toBe(false);
    expect(gain.feed(hour, 20)).toEqual({
      obscuration: decibelsToPercent(percentToDecibels(20) - 0.5),
      atLimit: true,
    });
  });
  it('stands still while the alarm threshold is passed', () => {
    const gain = slowGain({ limitDecibels: 2, decibelsPerHour: 1 }, 35);
    gain.feed(0, 40);
    expect(gain.feed(hour, 40).obscuration).toBeCloseTo(40, 12);
    expect(gain.feed(2 * hour, 100).obscuration).toBe(100);
  });
  it('is unmoved by a missing sample', () => {
    const gain = slowGain({ limitDecibels: 2, decibelsPerHour: 0.1 }, 35);
    gain.feed(0, 10);
    const before = gain.memory();
    expect(gain.feed(hour, Number.NaN).obscuration).toBeNaN();
    expect(gain.memory()).toEqual(before);
  });
  it('says at a missing sample, too, whether it is at its limit', () => {
    const gain = slowGain({ limitDecibels: 0.5, decibelsPerHour: 1 }, 35);
    gain.feed(0, 20);
    expect(gain.feed(1, Number.NaN).atLimit).toBe(false);
    gain.feed(hour, 20);
    expect(gain.feed(2 * hour, Number.NaN).atLimit).toBe(true);
  });

  it('EN 54-7:2001, 4.8 (from memory): every fire faster than A/4 an hour alarms within 1.6 A/R + 100 s', () => {
    for (const alarmThreshold of [20, 35, 50]) {
      const threshold = percentToDecibels(alarmThreshold);
      for (const share of [0.2501, 0.3, 0.5, 1, 4, 30]) {
        const { applies, limitSeconds } = slowFireLimit(threshold, share * threshold);
        expect(applies).toBe(true);
        expect(timeToAlarm(alarmThreshold, share * threshold, 0.6 * threshold)).toBeLessThanOrEqual(limitSeconds);
      }
    }
  });
  it('derived: without a limit, a fire slower than the gain would never alarm', () => {
    const threshold = percentToDecibels(35);
    expect(timeToAlarm(35, 0.9 * fastestGainShare * threshold, 1000)).toBe(Number.POSITIVE_INFINITY);
    expect(timeToAlarm(35, 0.9 * fastestGainShare * threshold, 0.6 * threshold)).toBeLessThan(30 * 86_400);
  });

  it('law: cutting a log in two and carrying the memory over changes nothing', () =>
    fc.assert(
      fc.property(
        fc.array(fc.double({ min: -5, max: 100, noNaN: true }), { maxLength: 30 }),
        fc.nat(30),
        (all, cut) => {
          const settings = { limitDecibels: 1, decibelsPerHour: 0.7 };
          const part = (values: readonly number[], from: number, carried?: SlowGainMemory) => {
            const gain = slowGain(settings, 35, carried);
            const seen = values.map((value, i) => gain.feed((from + i) * 600_000, value));
            return { seen, memory: gain.memory() };
          };
          const first = part(all.slice(0, cut), 0);
          const second = part(all.slice(cut), Math.min(cut, all.length), first.memory);
          expect([...first.seen, ...second.seen]).toEqual(part(all, 0).seen);
        },
      ),
      { seed: 11 },
    ));
});
