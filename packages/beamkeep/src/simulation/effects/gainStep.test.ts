import { describe, expect, it } from 'vitest';
import { day } from '../../columns/index.js';
import { plainScenario } from '../plainScenario.js';
import { simulate } from '../simulate.js';

const start = plainScenario().start;

describe('gainStep', () => {
  it('brings the reading back to clean air while the dirt stays, and is no cleaning', () => {
    const simulation = simulate(
      plainScenario(
        {},
        {
          effects: [
            {
              effect: 'dirt',
              stream: 'd',
              before: 0,
              rate: 0.5,
              workDaysOnly: false,
              bursts: 0,
              uneven: 0,
              cleanings: [],
            },
            { effect: 'gain-step', time: start + 20 * day, decibels: 'renormalised' },
          ],
        },
      ),
      1,
    );
    const [beam] = simulation.beams;
    expect(beam?.reading[20 * 1440 - 1]).toBeCloseTo(90, 0);
    expect(beam?.reading[20 * 1440]).toBeCloseTo(100, 0);
    expect(beam?.truth.causes.map(({ cause }) => cause)).toEqual(['contamination']);
    expect(beam?.truth.traces.some(({ cause, near }) => cause === 'cleaned' && !near)).toBe(true);
  });
});
