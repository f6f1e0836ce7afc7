import { describe, expect, it } from 'vitest';
import { plainScenario } from '../plainScenario.js';
import { scene } from '../scene.js';
import { aerosol } from './aerosol.js';

const set = scene(plainScenario({ samples: 28 * 1440 }), 3);
const plan = {
  effect: 'aerosol',
  stream: 'sanding',
  depth: 0.8,
  uneven: 0.2,
  active: 1,
  puffs: 10,
  rises: 2,
  clears: 10,
  ragged: 0.2,
  hours: [0.1, 0.9],
} as const;

describe('aerosol', () => {
  it('comes in working hours of working days and clears after', () => {
    const loss = aerosol(plan, set).loss ?? new Float32Array();
    let [working, idle] = [0, 0];
    for (let i = 0; i < loss.length; i++) {
      const instant = set.time[i] ?? 0;
      const hour = set.clock.hour(instant);
      const weekend = [0, 6].includes(new Date(set.clock.wall(instant)).getUTCDay());
      if (weekend || hour < 7 || hour > 18) idle = Math.max(idle, loss[i] ?? 0);
      else working = Math.max(working, loss[i] ?? 0);
    }
    expect(working).toBeGreaterThan(0.6);
    expect(idle).toBeLessThan(0.05);
  });

  it('comes on the weekdays asked for', () => {
    const { windows } = aerosol({ ...plan, weekdays: [2] }, set);
    expect(windows.map(({ from }) => new Date(from).getUTCDay())).toEqual([2, 2, 2, 2]);
  });

  it('is ragged: neighbouring samples differ more than its slow course', () => {
    const smooth = aerosol({ ...plan, ragged: 0 }, set).loss ?? new Float32Array();
    const ragged = aerosol(plan, set).loss ?? new Float32Array();
    const rough = (loss: Float32Array) =>
      loss.reduce((sum, value, i) => sum + Math.abs(value - (loss[i - 1] ?? value)), 0);
    expect(rough(ragged)).toBeGreaterThan(1.5 * rough(smooth));
  });
});
