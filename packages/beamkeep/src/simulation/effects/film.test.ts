import { describe, expect, it } from 'vitest';
import { plainScenario } from '../plainScenario.js';
import { scene } from '../scene.js';
import { film } from './film.js';

const set = scene(plainScenario({ start: Date.UTC(2027, 9, 1), samples: 60 * 144, intervalSeconds: 600 }), 2);
const plan = {
  effect: 'film',
  stream: 'mist',
  depth: 0.6,
  nights: 0.5,
  cooling: 3,
  dries: 1.2,
  own: 0.4,
  late: 0.2,
} as const;
const loss = film(plan, set).loss ?? new Float32Array();

describe('film', () => {
  it('is deepest about dawn and gone by afternoon', () => {
    const byHour = new Float64Array(24);
    for (let i = 0; i < loss.length; i++) {
      const hour = Math.floor(set.clock.hour(set.time[i] ?? 0));
      byHour[hour] = (byHour[hour] ?? 0) + (loss[i] ?? 0);
    }
    const deepest = byHour.indexOf(Math.max(...byHour));
    expect(deepest).toBeGreaterThanOrEqual(3);
    expect(deepest).toBeLessThanOrEqual(9);
    expect((byHour[15] ?? 0) / (byHour[deepest] ?? 1)).toBeLessThan(0.05);
  });

  it('comes on some nights only, and as deep as asked on an ordinary one', () => {
    const nights = Array.from({ length: 59 }, (_, d) => Math.max(...loss.subarray(72 + d * 144, 72 + (d + 1) * 144)));
    const misty = nights.filter((most) => most > 0.1).sort((a, b) => a - b);
    expect(misty.length).toBeGreaterThan(8);
    expect(misty.length).toBeLessThan(50);
    expect(misty[Math.floor(misty.length / 2)]).toBeGreaterThan(0.2);
    expect(misty[Math.floor(misty.length / 2)]).toBeLessThan(1.2);
  });

  it('is smooth: never a quarter of a decibel in ten minutes', () => {
    for (let i = 1; i < loss.length; i++) expect(Math.abs((loss[i] ?? 0) - (loss[i - 1] ?? 0))).toBeLessThan(0.25);
  });

  it('is the same night by night on beams that share it, each to its own depth', () => {
    const other = film({ ...plan, depth: 0.3 }, set).loss ?? new Float32Array();
    const wet = Array.from(loss, (value, i) => [value, other[i] ?? 0] as const).filter(([value]) => value > 0.05);
    for (const [a, b] of wet) expect(b / a).toBeGreaterThan(0.35);
  });
});
