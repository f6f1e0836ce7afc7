import { describe, expect, it } from 'vitest';
import { day } from '../columns/index.js';
import { beamLight } from './beamLight.js';
import type { Effect } from './effects/effect.js';
import { plainScenario } from './plainScenario.js';
import type { BeamPlan } from './scenario.js';
import { scene } from './scene.js';

const { start } = plainScenario();
const dirt: Effect = {
  effect: 'dirt',
  stream: 'd',
  before: 20,
  rate: 0,
  workDaysOnly: false,
  bursts: 0,
  uneven: 0,
  cleanings: [],
};
const knock: Effect = { effect: 'knock', time: start, turn: [1, 0], settles: 0, leaves: 0 };
const block: Effect = {
  effect: 'block',
  stream: 'b',
  standings: [{ from: start, to: start + day, covers: 0.3, edge: 0 }],
  restless: 0,
};
const light = (effects: readonly Effect[], changes: Partial<BeamPlan> = {}) => {
  const plan = plainScenario({ samples: 100 }, { ...changes, effects });
  const [beam] = plan.beams as [BeamPlan];
  return beamLight(beam, scene(plan, 1));
};

describe('beamLight', () => {
  it('multiplies what each effect leaves (losses add in decibels)', () => {
    expect(light([dirt, knock, block]).level[50]).toBeCloseTo(0.8 * 0.5 * 0.7, 6);
  });

  it('tells what one cause takes from what the others leave', () => {
    const beam = light([dirt, knock, block]);
    const part = beam.parts.find(({ cause }) => cause === 'obstruction');
    expect(beam.taken(part ? [part] : [])[50]).toBeCloseTo(0.8 * 0.5 * 0.3, 6);
  });

  it('joins turns before the lobe makes one loss of them: a half-angle and back is none', () => {
    const back: Effect = { ...knock, turn: [-1, 0] };
    expect(light([knock, back]).level[50]).toBeCloseTo(1, 6);
    expect(light([knock, knock]).level[50]).toBeCloseTo(2 ** -4, 6);
  });

  it('reads what comes back covered under everything, and no more than its ceiling', () => {
    expect(light([dirt], { covered: 0.1 }).reading[50]).toBeCloseTo(0.1 + 0.9 * 0.8, 2);
    const bright = light([{ effect: 'gain-step', time: start, decibels: 3 }], { ceiling: 1.2 });
    expect(Math.max(...bright.reading)).toBe(1.2);
  });
});
