import { describe, expect, it } from 'vitest';
import { plainScenario } from '../plainScenario.js';
import { scene } from '../scene.js';
import { movement } from './movement.js';

const set = scene(plainScenario({ start: Date.UTC(2027, 5, 7), samples: 28 * 144, intervalSeconds: 600 }), 4);
const row = (days: number) => Math.round(days * 144);

describe('movement', () => {
  const plan = {
    effect: 'movement',
    stream: 'roof',
    swing: 0.3,
    reach: 3,
    direction: 0,
    lag: 1,
    across: 0,
    acrossLag: 2,
    wind: 0,
    aimedAt: 0.5,
  } as const;

  const crest = (lag: number) => {
    const x = movement({ ...plan, lag }, set).turn?.[0] ?? new Float32Array();
    const hours = Array.from({ length: 28 }, (_, d) => {
      const part = x.subarray(row(d), row(d + 1));
      return part.indexOf(Math.max(...part)) / 6;
    }).sort((a, b) => a - b);
    return hours[14] ?? 0;
  };

  it('swings as far as asked on a large day, and less on others', () => {
    const x = movement(plan, set).turn?.[0] ?? new Float32Array();
    const swings = Array.from(
      { length: 28 },
      (_, d) => Math.max(...x.subarray(row(d), row(d + 1))) - Math.min(...x.subarray(row(d), row(d + 1))),
    );
    expect(Math.max(...swings)).toBeGreaterThanOrEqual(0.3);
    expect(Math.min(...swings)).toBeLessThan(0.27);
  });

  it('comes later with a longer lag', () => {
    expect(crest(0.5)).toBeGreaterThan(10);
    expect(crest(5) - crest(0.5)).toBeGreaterThan(1.5);
  });

  it('follows the season, unless the structure gives way to what stays', () => {
    const autumn = scene(plainScenario({ start: Date.UTC(2027, 7, 1), samples: 90 * 24, intervalSeconds: 3600 }), 4);
    const change = (givesWay?: number): number => {
      const of = movement({ ...plan, ...(givesWay === undefined ? {} : { givesWay }) }, autumn).turn?.[0] ?? [];
      const middle = (days: readonly [number, number]) =>
        Array.from(of.slice(24 * days[0], 24 * days[1])).reduce((sum, v) => sum + v / (24 * (days[1] - days[0])), 0);
      return middle([70, 90]) - middle([0, 20]);
    };
    expect(change()).toBeLessThan(-0.1);
    expect(Math.abs(change(5))).toBeLessThan(0.05);
  });

  it('walks along its direction', () => {
    const { turn } = movement({ ...plan, direction: Math.PI / 2 }, set);
    expect(Math.max(...(turn?.[0] ?? []).map(Math.abs))).toBeLessThan(1e-6);
  });
});
