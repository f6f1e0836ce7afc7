import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { day, hour } from '../../columns/index.js';
import { normalNoise } from '../normalNoise.js';
import { harmonics } from './harmonics.js';

const start = Date.UTC(2027, 0, 1);
const time = Float64Array.from({ length: 24 * 30 }, (_, i) => start + i * hour);
const turn = (t: number) => (2 * Math.PI * (t % day)) / day;

describe('harmonics', () => {
  it('law: mean, amplitudes and phases come back, whatever rows are missing', () => {
    const phase = fc.double({ min: -3, max: 3, noNaN: true });
    fc.assert(
      fc.property(phase, phase, fc.integer({ min: 2, max: 9 }), (first, second, hole) => {
        const values = time.map((t, i) =>
          i % hole === 0 ? Number.NaN : 2 + 0.5 * Math.cos(turn(t) - first) + 0.2 * Math.cos(2 * turn(t) - second),
        );
        const found = harmonics(time, values, day, 2);
        expect(found.mean).toBeCloseTo(2, 9);
        expect(found.harmonics[0]?.amplitude).toBeCloseTo(0.5, 9);
        expect(found.harmonics[0]?.phase).toBeCloseTo(first, 8);
        expect(found.harmonics[1]?.amplitude).toBeCloseTo(0.2, 9);
        expect(found.harmonics[1]?.phase).toBeCloseTo(second, 8);
      }),
      { seed: 77 },
    );
  });
  it('errors are those seen over many records', () => {
    const noise = normalNoise(78);
    const found = Array.from({ length: 200 }, () => {
      const values = time.map((t) => Math.cos(turn(t) - 1) + noise());
      return harmonics(time, values, day, 1).harmonics[0];
    });
    const deviation = (value: (k: number) => number, truth: number) =>
      Math.sqrt(found.reduce((sum, _, k) => sum + (value(k) - truth) ** 2, 0) / found.length);
    const amplitudes = deviation((k) => found[k]?.amplitude ?? NaN, 1);
    const phases = deviation((k) => found[k]?.phase ?? NaN, 1);
    expect(amplitudes / (found[0]?.amplitudeError ?? NaN)).toBeGreaterThan(0.85);
    expect(amplitudes / (found[0]?.amplitudeError ?? NaN)).toBeLessThan(1.15);
    expect(phases / (found[0]?.phaseError ?? NaN)).toBeGreaterThan(0.85);
    expect(phases / (found[0]?.phaseError ?? NaN)).toBeLessThan(1.15);
  });
  it('no swing at all has no phase to be sure of', () => {
    const [first] = harmonics(
      time,
      time.map(() => 3),
      day,
      1,
    ).harmonics;
    expect(first?.amplitude).toBeLessThan(1e-12);
  });
});
