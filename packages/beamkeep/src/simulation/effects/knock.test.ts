import { describe, expect, it } from 'vitest';
import { day } from '../../columns/index.js';
import { plainScenario } from '../plainScenario.js';
import { plainRecording } from '../recording/recording.js';
import { scene } from '../scene.js';
import { knock } from './knock.js';

const set = scene(plainScenario({ start: Date.UTC(2027, 5, 7), samples: 28 * 144, intervalSeconds: 600 }), 4);
const { start } = set.scenario;
const row = (days: number) => Math.round(days * 144);

describe('knock', () => {
  it('turns at once and stays, until it is aimed again', () => {
    const { turn } = knock(
      {
        effect: 'knock',
        time: start + 5 * day,
        turn: [0.4, -0.2],
        settles: 0,
        aimedAgain: start + 9 * day,
        leaves: 0.1,
      },
      set,
    );
    expect(turn?.[0][row(5) - 1]).toBe(0);
    expect(turn?.[0][row(5)]).toBeCloseTo(0.4, 6);
    expect(turn?.[1][row(8)]).toBeCloseTo(-0.2, 6);
    expect(turn?.[0][row(9)]).toBeCloseTo(0.04, 6);
  });

  it('may settle over some hours', () => {
    const { turn } = knock({ effect: 'knock', time: start + 5 * day, turn: [1, 0], settles: 0.2, leaves: 0 }, set);
    expect(turn?.[0][row(5)]).toBeCloseTo(0.8, 6);
    expect(turn?.[0][row(7)]).toBeGreaterThan(0.99);
  });

  it('where a sample is a mean, turns by a share of the sample in which it comes', () => {
    const recording = { ...plainRecording, sampling: 'mean' as const };
    const means = scene(plainScenario({ samples: 6, intervalSeconds: 600, recording }), 4);
    const first = means.scenario.start;
    const { turn } = knock(
      { effect: 'knock', time: first + 2.25 * 600_000, turn: [0.4, 0], settles: 0, leaves: 0 },
      means,
    );
    expect(Array.from(turn?.[0] ?? [], (value) => Math.round(value * 1000))).toEqual([0, 0, 0, 300, 400, 400]);
  });
});
