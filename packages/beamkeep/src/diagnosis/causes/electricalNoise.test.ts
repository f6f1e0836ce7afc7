import { describe, expect, it } from 'vitest';
import {
  at,
  chanceOf,
  diagnosed,
  hourOf,
  left,
  measured,
  normalOf,
  recordOf,
  stated,
  theOne,
} from '../../../../../tests/diagnosis/kit.js';
import { heatOfDay, lobe, typical } from '../../../../../tests/diagnosis/typical.js';
import { hour, minute } from '../../columns/index.js';

describe('electrical-noise', () => {
  it('is told from begin to end, give or take a run of samples, with the spread that was put in', () => {
    const found = theOne(diagnosed(typical['electrical-noise']()), 'electrical-noise');
    expect(Math.abs(found.start - at(10))).toBeLessThanOrEqual(hour);
    expect(Math.abs(found.end - at(12))).toBeLessThanOrEqual(hour);
    expect(measured(found, 'spread') / 2.3).toBeCloseTo(1, 1);
    expect([found.severity, found.ongoing]).toEqual(['note', false]);
  });
  it('knows spikes of both signs', () => {
    const spike = (t: number): number => {
      const k = Math.floor(t / (5 * minute));
      return t > at(10) && t < at(12) && chanceOf(k, 6) < 0.2 ? (chanceOf(k, 7) < 0.5 ? 0.06 : -0.06) : 0;
    };
    expect(stated(diagnosed(recordOf((t) => 1 + spike(t), { days: 20 })), 'electrical-noise')).toHaveLength(1);
  });
  it('is not stated of a structure that sticks and slips', () => {
    // A new level every hour or two of some hours, and none between.
    const stuck = (t: number): number => {
      const hours = hourOf(t);
      return hours > 9 && hours < 19
        ? 0.05 * (chanceOf(Math.floor((t + 20 * minute * chanceOf(Math.floor(t / hour), 3)) / hour), 2) - 0.5)
        : 0;
    };
    expect(
      stated(diagnosed(recordOf((t) => 1 + stuck(t), { days: 20, intervalSeconds: 180 })), 'electrical-noise'),
    ).toEqual([]);
  });
  it('is not stated of a structure that slips from level to level every few samples', () => {
    const sample = (t: number): number => Math.floor(t / (5 * minute));
    const level = (k: number): number => (chanceOf(k, 4) < 0.5 ? Math.floor(3 * chanceOf(k, 9)) / 2 : level(k - 1));
    const slips = (t: number): number => (t > at(10) && t < at(12) ? 0.03 * level(sample(t)) : 0);
    expect(stated(diagnosed(recordOf((t) => 1 - slips(t), { days: 20, noise: 0.002 })), 'electrical-noise')).toEqual(
      [],
    );
  });
  it('is not stated of a level that wanders for an hour', () => {
    const course = (t: number): number => {
      const k = Math.floor(t / (4 * minute));
      const share = t / (4 * minute) - k;
      return (1 - share) * normalOf(k, 6) + share * normalOf(k + 1, 6);
    };
    const wanders = (t: number): number => (t > at(10, 10) && t < at(10, 11) ? 0.012 * course(t) : 0);
    const record = recordOf((t) => 1 + wanders(t), { days: 20, intervalSeconds: 60, noise: 0.0006 });
    expect(stated(diagnosed(record), 'electrical-noise')).toEqual([]);
  });
  it.each([
    ['a beam that keeps still', 0, 1],
    ['a beam that sways, as wind moves it, too', 0.3, 0],
  ])('is asked for more on %s', (_, sway, count) => {
    const gusts = (t: number): number => (t > at(10) && t < at(12) ? 3 : 1);
    const record = recordOf(
      (t) => left(lobe(0.5 + sway * heatOfDay(t))) * (1 + 0.004 * gusts(t) * normalOf(Math.floor(t / (5 * minute)), 8)),
      { days: 20 },
    );
    const found = diagnosed(record);
    expect(stated(found, 'electrical-noise')).toHaveLength(count);
    const noise = found.findings.find(({ cause }) => cause === 'electrical-noise');
    expect(noise?.evidence.some(({ measure }) => measure.startsWith('daily swing'))).toBe(sway > 0);
  });
  it('is told beside a light of an hour a day, during which it lasts', () => {
    const light = (t: number): number => (hourOf(t) >= 13 && hourOf(t) < 14 ? 0.2 : 0);
    const noise = (t: number): number =>
      t > at(10) && t < at(12) ? 0.01 * normalOf(Math.floor(t / (5 * minute)), 8) : 0;
    const found = diagnosed(recordOf((t) => 1 + light(t) + noise(t), { days: 20 }));
    expect(stated(found, 'ambient-light').length).toBeGreaterThan(0);
    expect(stated(found, 'electrical-noise')).toHaveLength(1);
  });
  it.each(['vibration', 'process-aerosol'] as const)('is not stated of %s', (other) =>
    expect(stated(diagnosed(typical[other]()), 'electrical-noise')).toEqual([]),
  );
});
