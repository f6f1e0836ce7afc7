import { describe, expect, it } from 'vitest';
import { plainScenario } from '../plainScenario.js';
import { scene } from '../scene.js';
import { loadMovement } from './loadMovement.js';

const set = scene(plainScenario({ start: Date.UTC(2027, 5, 7), samples: 28 * 144, intervalSeconds: 600 }), 4);

describe('loadMovement', () => {
  it('is there in working hours only', () => {
    const { turn } = loadMovement(
      { effect: 'load-movement', stream: 'crane', turn: [0.3, 0], stays: 60, busy: 0.5, ramp: 60 },
      set,
    );
    const x = turn?.[0] ?? new Float32Array();
    expect(Math.max(...x)).toBeGreaterThan(0.1);
    for (let i = 0; i < x.length; i++) {
      const at = set.clock.hour(set.time[i] ?? 0);
      if (at < 7 || at > 16) expect(x[i]).toBe(0);
    }
  });
});
