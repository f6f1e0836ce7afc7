import { describe, expect, it } from 'vitest';
import { hour } from '../../columns/index.js';
import { plainScenario } from '../plainScenario.js';
import { scene } from '../scene.js';
import { electricalNoise } from './electricalNoise.js';

const set = scene(plainScenario({ samples: 20_000, intervalSeconds: 1 }), 1);
const { start } = set.scenario;
const plan = {
  effect: 'electrical-noise',
  stream: 'supply',
  bursts: [{ from: start + hour, to: start + 5 * hour }],
  times: 5,
  spikes: 0,
  spikeHeight: 0.1,
  grows: false,
} as const;

describe('electricalNoise', () => {
  it('widens the spread and leaves the level', () => {
    const light = (electricalNoise(plan, set, 0.002).light ?? new Float32Array()).subarray(3600, 5 * 3600);
    const mean = light.reduce((sum, value) => sum + value, 0) / light.length;
    const spread = Math.sqrt(light.reduce((sum, value) => sum + value * value, 0) / light.length);
    expect(Math.abs(mean)).toBeLessThan(3e-4);
    expect(spread).toBeCloseTo(0.01, 3);
  });

  it('spikes to both sides', () => {
    const light = electricalNoise({ ...plan, times: 0, spikes: 60 }, set, 0.002).light ?? [];
    const spikes = Array.from(light).filter((value) => Math.abs(value) > 0.03);
    expect(spikes.length).toBeGreaterThan(120);
    expect(spikes.some((value) => value > 0) && spikes.some((value) => value < 0)).toBe(true);
  });

  it('may grow from nothing', () => {
    const light = electricalNoise({ ...plan, grows: true }, set, 0.002).light ?? new Float32Array();
    const spread = (from: number) => Math.max(...light.subarray(from, from + 1800).map(Math.abs));
    expect(spread(3600)).toBeLessThan(0.3 * spread(4.4 * 3600));
  });
});
