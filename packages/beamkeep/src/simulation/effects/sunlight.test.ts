import { describe, expect, it } from 'vitest';
import { day } from '../../columns/index.js';
import { plainScenario } from '../plainScenario.js';
import { scene } from '../scene.js';
import { sunlight } from './sunlight.js';

const set = scene(
  plainScenario({
    start: Date.UTC(2027, 1, 1),
    samples: 90 * 288,
    intervalSeconds: 300,
    climate: { ...plainScenario().climate, cloud: 0.1 },
  }),
  6,
);

describe('sunlight', () => {
  const plan = {
    effect: 'sunlight',
    stream: 'gable',
    azimuth: [120, 5],
    elevation: [5, 60],
    adds: 0.2,
    rough: 0,
    edge: 1,
  } as const;
  const light = sunlight(plan, set).light ?? new Float32Array();
  const lit = Array.from(light, (value, i) => ({ value, instant: set.time[i] ?? 0 })).filter(
    ({ value }) => value > 0.05,
  );

  it('adds while the sun stands in the window, and by day only', () => {
    expect(lit.length).toBeGreaterThan(50);
    for (const { instant } of lit) {
      const hour = set.clock.hour(instant);
      expect(hour).toBeGreaterThan(7);
      expect(hour).toBeLessThan(12);
    }
  });

  it('comes at another hour of the clock in April than in February', () => {
    const middle = (from: number, to: number) => {
      const hours = lit.flatMap(({ instant }) => {
        const age = (instant - set.scenario.start) / day;
        return age >= from && age < to ? [(instant % day) / 3_600_000] : [];
      });
      return hours.reduce((sum, hour) => sum + hour, 0) / hours.length;
    };
    expect(Math.abs(middle(60, 90) - middle(0, 30))).toBeGreaterThan(0.3);
  });

  it('takes away where it blinds', () => {
    const blind = sunlight({ ...plan, adds: -0.5 }, set).light ?? new Float32Array();
    expect(Math.min(...blind)).toBeLessThan(-0.3);
    expect(Math.max(...blind)).toBeLessThanOrEqual(0);
  });
});
