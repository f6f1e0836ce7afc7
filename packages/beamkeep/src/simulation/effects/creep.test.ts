import { describe, expect, it } from 'vitest';
import { day } from '../../columns/index.js';
import { plainScenario } from '../plainScenario.js';
import { scene } from '../scene.js';
import { creep } from './creep.js';

const set = scene(plainScenario({ start: Date.UTC(2027, 5, 7), samples: 28 * 144, intervalSeconds: 600 }), 4);
const { start } = set.scenario;
const row = (days: number) => Math.round(days * 144);

describe('creep', () => {
  it('turns with the power of time', () => {
    const { turn } = creep({ effect: 'creep', from: start, to: start + 20 * day, turn: [0.8, 0.4], power: 2 }, set);
    expect(turn?.[0][row(10)]).toBeCloseTo(0.2, 5);
    expect(turn?.[1][row(20)]).toBeCloseTo(0.4, 5);
  });
});
