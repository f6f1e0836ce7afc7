import { describe, expect, it } from 'vitest';
import { day } from '../columns/index.js';
import { plainScenario } from './plainScenario.js';
import { simulate } from './simulate.js';

const knock = { effect: 'knock', time: plainScenario().start + day, turn: [0.4, 0], settles: 0, leaves: 0 } as const;
const noise = {
  effect: 'electrical-noise',
  stream: 'n',
  bursts: 'shifts',
  times: 4,
  spikes: 3,
  spikeHeight: 0.1,
  grows: false,
} as const;

describe('simulate', () => {
  it('writes the same bytes from the same scenario and seed', () => {
    const text = () => [...simulate(plainScenario({ samples: 4000 }, { effects: [knock, noise] }), 9).lines()].join('');
    expect(text()).toBe(text());
  });

  it('writes other bytes from another seed', () => {
    const reading = (seed: number) => simulate(plainScenario({ samples: 100 }), seed).beams[0]?.reading;
    expect(reading(1)).not.toEqual(reading(2));
  });

  it('changes nothing else when an effect is added', () => {
    const reading = (effects: readonly [typeof knock] | readonly []) =>
      simulate(plainScenario({ samples: 4000 }, { effects }), 9).beams[0]?.reading ?? new Float64Array();
    expect(reading([knock]).subarray(0, 1440)).toEqual(reading([]).subarray(0, 1440));
  });

  it('starts clean: a beam without effects reads clean air within its noise', () => {
    const [beam] = simulate(plainScenario({ samples: 1000 }), 1).beams;
    const mean = (beam?.reading.reduce((sum, value) => sum + value, 0) ?? 0) / 1000;
    expect(Math.abs(mean - 100)).toBeLessThan(0.02);
  });

  it('adds what the covered reading says', () => {
    const covers = { from: plainScenario().start, to: plainScenario().start + day, covers: 1, edge: 0 };
    const effects = [{ effect: 'block', stream: 'b', standings: [covers], restless: 0 } as const];
    const [beam] = simulate(plainScenario({ samples: 100 }, { covered: 0.05, effects }), 1).beams;
    expect(beam?.reading[50]).toBeCloseTo(5, 0);
  });
});
